import { memo } from 'react';
import { FIBRES, type Fibre } from '#fabric';
import { LengthField } from '../field/LengthField.tsx';
import { NumberField } from '../field/NumberField.tsx';
import { Select } from '../field/Select.tsx';
import { say } from '../messages.ts';
import type { YarnNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { showNumber } from '../reading/numbers.ts';
import { metresOf, namesUnit } from '../reading/read.ts';
import { writeYarn } from './write-yarn.ts';
import fieldGrid from '../ui/field-grid.module.css';

/** The thickness from a swatch, or what is on the label. */
export const YarnFields = memo(function YarnFields({
  notes,
  tape,
}: {
  readonly notes: YarnNotes;
  readonly tape: Tape;
}) {
  const words = say.yarn;
  return (
    <div>
      <h3>{words.swatch}</h3>
      <LengthField
        label={words.fourLayers}
        quantity="small"
        typed={notes.fourLayers}
        tape={tape}
        whenEmpty={words.fourLayersHint}
        onTyped={(fourLayers) => writeYarn((it) => ({ ...it, fourLayers }))}
      />
      <h3>{words.label}</h3>
      <div className={fieldGrid.grid}>
        <Select
          label={words.category}
          value={notes.category === null ? '' : String(notes.category)}
          options={[
            { value: '', label: words.unsaid },
            ...words.categories.map((label, i) => ({ value: String(i), label })),
          ]}
          onValue={(value) => writeYarn((it) => ({ ...it, category: value === '' ? null : Number(value) }))}
        />
        <NumberField
          label={words.stitches}
          value={notes.stitches}
          onValue={(stitches) => writeYarn((it) => ({ ...it, stitches }))}
        />
        <NumberField
          label={words.wraps}
          value={notes.wraps}
          onValue={(wraps) => writeYarn((it) => ({ ...it, wraps }))}
        />
        <NumberField
          label={words.metres}
          value={notes.metresPer100g}
          read={metresOf}
          numeric={tape === 'cm'}
          unit={namesUnit(notes.metresPer100g) ? '' : words.metresUnit}
          hint={inMetres(notes.metresPer100g) ?? words.metresHint}
          onValue={(metresPer100g) => writeYarn((it) => ({ ...it, metresPer100g }))}
        />
        <Select
          label={words.fibre}
          value={notes.fibre ?? ''}
          options={[
            { value: '' as Fibre | '', label: words.unsaid },
            ...FIBRES.map((value) => ({ value, label: words.fibres[value] })),
          ]}
          onValue={(value) => writeYarn((it) => ({ ...it, fibre: value === '' ? null : value }))}
        />
      </div>
    </div>
  );
});

/** A length entered with its unit, in metres. */
function inMetres(text: string): string | null {
  const metres = namesUnit(text) ? metresOf(text) : null;
  return metres === null ? null : say.field.equals(`${showNumber(metres)} ${say.yarn.metresUnit}`);
}
