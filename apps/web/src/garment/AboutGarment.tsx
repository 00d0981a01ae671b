import { memo } from 'react';
import { EASE_CATEGORIES, NECKLINES, REGIONS, SLEEVES, WEARS, type Region, type Wears } from '#garment';
import { Choice } from '../field/Choice.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { Select } from '../field/Select.tsx';
import { Tick } from '../field/Tick.tsx';
import { say } from '../messages.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { isNoThickness } from '../compute/to-garment.ts';
import { LayerFields } from '../field/LayerFields.tsx';
import { writeGarment } from './write-garment.ts';
import styles from './AboutGarment.module.css';

const writeWears = (region: Region, wears: Wears | ''): void =>
  writeGarment((it) => {
    const { [region]: _, ...rest } = it.wears;
    return { ...it, wears: wears === '' ? rest : { ...rest, [region]: wears } };
  });

/** What the flat measurements do not say about the sweater: its fabric, what is worn beneath, how it fits. */
export const AboutGarment = memo(function AboutGarment({
  sleeveFrom,
  thickness,
  layer,
  wornStretched,
  fits,
  neckline,
  sleeve,
  wears,
  tape,
}: Pick<
  GarmentNotes,
  'sleeveFrom' | 'thickness' | 'layer' | 'wornStretched' | 'fits' | 'neckline' | 'sleeve' | 'wears'
> & { readonly tape: Tape }) {
  const words = say.garment;
  return (
    <>
      <Choice
        legend={words.sleeveFrom.legend}
        value={sleeveFrom}
        options={(['seam', 'centre-back'] as const).map((value) => ({ value, label: words.sleeveFrom[value] }))}
        onValue={(to) => writeGarment((it) => ({ ...it, sleeveFrom: to }))}
      />
      <LengthField
        label={words.thickness}
        quantity="small"
        typed={thickness}
        tape={tape}
        whenEmpty={words.thicknessHint}
        leftOut={isNoThickness(thickness) ? words.noFabric : undefined}
        onTyped={(to) => writeGarment((it) => ({ ...it, thickness: to }))}
      />
      <LayerFields
        legend={words.beneath}
        layer={layer}
        tape={tape}
        onLayer={(to) => writeGarment((it) => ({ ...it, layer: to }))}
      />
      <Tick
        label={words.stretched}
        value={wornStretched}
        onValue={(to) => writeGarment((it) => ({ ...it, wornStretched: to }))}
      />
      <fieldset className={styles.wears}>
        <legend>{words.about}</legend>
        <Select
          label={words.fits}
          value={fits ?? ''}
          options={[
            { value: '', label: words.wears.unsaid },
            ...EASE_CATEGORIES.map((value) => ({ value, label: say.design.ease[value] })),
          ]}
          onValue={(to) => writeGarment((it) => ({ ...it, fits: to === '' ? null : to }))}
        />
        <Select
          label={say.design.neckline.legend}
          value={neckline ?? ''}
          options={[
            { value: '', label: words.wears.unsaid },
            ...NECKLINES.map((value) => ({ value, label: say.design.neckline[value] })),
          ]}
          onValue={(to) => writeGarment((it) => ({ ...it, neckline: to === '' ? null : to }))}
        />
        <Select
          label={words.sleeves.legend}
          value={sleeve}
          options={SLEEVES.map((value) => ({ value, label: words.sleeves[value] }))}
          onValue={(to) => writeGarment((it) => ({ ...it, sleeve: to }))}
        />
      </fieldset>
      <details>
        <summary>{words.wears.legend}</summary>
        <div className={styles.wears}>
          {REGIONS.map((region) => (
            <Select
              key={region}
              label={words.region[region]}
              value={wears[region] ?? ''}
              options={[
                { value: '', label: words.wears.unsaid },
                ...WEARS.map((value) => ({ value, label: words.wears[value] })),
              ]}
              onValue={(value) => writeWears(region, value)}
            />
          ))}
        </div>
      </details>
    </>
  );
});
