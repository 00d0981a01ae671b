import { memo } from 'react';
import { WEARS, type Wears } from '#garment';
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

const REGIONS = ['chest', 'hip', 'upper-arm', 'length', 'sleeve'] as const;

const writeWears = (region: (typeof REGIONS)[number], wears: Wears | ''): void =>
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
  wears,
  tape,
}: Pick<GarmentNotes, 'sleeveFrom' | 'thickness' | 'layer' | 'wornStretched' | 'wears'> & { readonly tape: Tape }) {
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
        <legend>{words.wears.legend}</legend>
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
      </fieldset>
    </>
  );
});
