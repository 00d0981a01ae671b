import { memo, useDeferredValue, useMemo, useState } from 'react';
import { CONSTRUCTIONS, GARMENT_DIMENSIONS, type GarmentDimension } from '#garment';
import { Choice } from '../field/Choice.tsx';
import { say } from '../messages.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import { openEntry, type Shelf } from '../notebook/shelf.ts';
import { ShelfBar } from '../notebook/ShelfBar.tsx';
import type { Tape } from '../notebook/typed.ts';
import type { Asking } from '../reckon/reckoned.ts';
import { flatMeasures } from '../reckon/to-garment.ts';
import { AboutGarment } from './AboutGarment.tsx';
import { FlatDrawing } from './FlatDrawing.tsx';
import { FlatRow } from './FlatRow.tsx';
import { writeGarment } from './write-garment.ts';

/** The favourite garment: a drawing of it laid flat, and a line to write on for each measure along it. */
export const GarmentSection = memo(function GarmentSection({
  shelf,
  tape,
  asking,
}: {
  readonly shelf: Shelf<GarmentNotes>;
  readonly tape: Tape;
  readonly asking: Asking;
}) {
  const [active, setActive] = useState<GarmentDimension | null>(null);
  const { notes } = openEntry(shelf);
  const ask = useDeferredValue(asking);
  const questions = useMemo(() => ask.ofGarment(), [ask]);
  const { construction, measures, sleeveFrom, thickness, layer, wornStretched, wears } = notes;
  const drawn = useDeferredValue(useMemo(() => flatMeasures({ measures }), [measures]));
  return (
    <>
      <p className="lead">{say.garment.lead}</p>
      <ShelfBar kind="garments" shelf={shelf} nameLabel={say.garment.name} />
      <Choice
        legend={say.garment.construction}
        value={construction}
        options={CONSTRUCTIONS.map((value) => ({ value, label: say.construction[value] }))}
        onValue={(to) => writeGarment((it) => ({ ...it, construction: to }))}
      />
      <div className="flat">
        <FlatDrawing construction={construction} measures={drawn} sleeveFrom={sleeveFrom} active={active} tape={tape} />
        <ul className="flat-measures" onBlur={() => setActive(null)}>
          {GARMENT_DIMENSIONS.map((name) => (
            <FlatRow
              key={name}
              name={name}
              typed={measures[name]}
              tape={tape}
              question={active === name ? null : (questions[name] ?? null)}
              onWriting={setActive}
            />
          ))}
        </ul>
      </div>
      <AboutGarment
        sleeveFrom={sleeveFrom}
        thickness={thickness}
        layer={layer}
        wornStretched={wornStretched}
        wears={wears}
        tape={tape}
      />
    </>
  );
});
