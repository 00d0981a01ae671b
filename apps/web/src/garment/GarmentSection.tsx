import { memo, useState } from 'react';
import { CONSTRUCTIONS, GARMENT_DIMENSIONS, WEARS, type GarmentDimension, type Wears } from '#garment';
import { Ask, type Question } from '../body/Ask.tsx';
import { Choice } from '../field/Choice.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { Select } from '../field/Select.tsx';
import { Tick } from '../field/Tick.tsx';
import { say } from '../messages.ts';
import { onShelf } from '../notebook/kinds.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import { openEntry, withNotes, type Shelf } from '../notebook/shelf.ts';
import { ShelfBar } from '../notebook/ShelfBar.tsx';
import type { Tape } from '../notebook/typed.ts';
import { change } from '../notebook/use-notebook.ts';
import { flatMeasures } from '../reckon/to-garment.ts';
import { FlatDrawing, LETTERS } from './FlatDrawing.tsx';
import { LayerFields } from './LayerFields.tsx';

const REGIONS = ['chest', 'hip', 'upper-arm', 'length', 'sleeve'] as const;

const write = (how: (notes: GarmentNotes) => GarmentNotes): void =>
  change((notebook) => onShelf(notebook, 'garments', (shelf) => withNotes(shelf, how)));

/** The favourite garment: a drawing of it laid flat, and a line to write on for each measure along it. */
export const GarmentSection = memo(function GarmentSection({
  shelf,
  tape,
  questions,
}: {
  readonly shelf: Shelf<GarmentNotes>;
  readonly tape: Tape;
  readonly questions: Readonly<Partial<Record<GarmentDimension, Question<GarmentDimension>>>>;
}) {
  const [active, setActive] = useState<GarmentDimension | null>(null);
  const { notes } = openEntry(shelf);
  const sayWears = (region: (typeof REGIONS)[number], wears: Wears | ''): void =>
    write((it) => {
      const { [region]: _, ...rest } = it.wears;
      return { ...it, wears: wears === '' ? rest : { ...rest, [region]: wears } };
    });
  return (
    <>
      <p className="lead">{say.garment.lead}</p>
      <ShelfBar kind="garments" shelf={shelf} nameLabel={say.garment.name} />
      <Choice
        legend={say.garment.construction}
        value={notes.construction}
        options={CONSTRUCTIONS.map((value) => ({ value, label: say.construction[value] }))}
        onValue={(construction) => write((it) => ({ ...it, construction }))}
      />
      <div className="flat">
        <FlatDrawing
          construction={notes.construction}
          measures={flatMeasures(notes)}
          sleeveFrom={notes.sleeveFrom}
          active={active}
          tape={tape}
        />
        <ul className="flat-measures" onBlur={() => setActive(null)}>
          {GARMENT_DIMENSIONS.map((name) => (
            <li key={name}>
              <div onFocus={() => setActive(name)}>
                <LengthField
                  id={`flat-${name}`}
                  label={say.garment.dimension[name]}
                  mark={LETTERS[name]}
                  typed={notes.measures[name]}
                  tape={tape}
                  whenEmpty={say.garment.how[name]}
                  onTyped={(typed) => write((it) => ({ ...it, measures: { ...it.measures, [name]: typed } }))}
                />
              </div>
              {active !== name && questions[name] && (
                <Ask
                  question={questions[name]}
                  onRepair={(to) => {
                    write((it) => ({ ...it, measures: { ...it.measures, ...to } }));
                    document.getElementById(`flat-${name}`)?.focus();
                  }}
                  onConfirm={() => {
                    write((it) => ({ ...it, confirmed: { ...it.confirmed, [name]: it.measures[name]?.text } }));
                    document.getElementById(`flat-${name}`)?.focus();
                  }}
                />
              )}
            </li>
          ))}
        </ul>
      </div>
      <Choice
        legend={say.garment.sleeveFrom.legend}
        value={notes.sleeveFrom}
        options={(['seam', 'centre-back'] as const).map((value) => ({ value, label: say.garment.sleeveFrom[value] }))}
        onValue={(sleeveFrom) => write((it) => ({ ...it, sleeveFrom }))}
      />
      <LengthField
        label={say.garment.thickness}
        quantity="small"
        typed={notes.thickness}
        tape={tape}
        whenEmpty={say.garment.thicknessHint}
        onTyped={(thickness) => write((it) => ({ ...it, thickness }))}
      />
      <LayerFields
        legend={say.garment.beneath}
        layer={notes.layer}
        tape={tape}
        onLayer={(layer) => write((it) => ({ ...it, layer }))}
      />
      <Tick
        label={say.garment.stretched}
        value={notes.wornStretched}
        onValue={(wornStretched) => write((it) => ({ ...it, wornStretched }))}
      />
      <fieldset className="wears">
        <legend>{say.garment.wears.legend}</legend>
        {REGIONS.map((region) => (
          <Select
            key={region}
            label={say.garment.region[region]}
            value={notes.wears[region] ?? ''}
            options={[
              { value: '', label: say.garment.wears.unsaid },
              ...WEARS.map((value) => ({ value, label: say.garment.wears[value] })),
            ]}
            onValue={(value) => sayWears(region, value)}
          />
        ))}
      </fieldset>
    </>
  );
});
