import { memo, useDeferredValue, useMemo, useState } from 'react';
import { CONSTRUCTIONS, GARMENT_DIMENSIONS, type GarmentDimension } from '#garment';
import { Choice } from '../field/Choice.tsx';
import { say } from '../messages.ts';
import type { BodyNotes, GarmentNotes } from '../notebook/notebook.ts';
import { openEntry, type Collection } from '../notebook/collection.ts';
import { CollectionBar } from '../collections/CollectionBar.tsx';
import type { Tape } from '../notebook/typed.ts';
import type { OpenQuestions } from '../compute/computation.ts';
import { flatMeasures } from '../compute/to-garment.ts';
import { isConfirmed } from '../reading/garment-record.ts';
import { AboutGarment } from './AboutGarment.tsx';
import { FlatDrawing } from './FlatDrawing.tsx';
import { FlatRow } from './FlatRow.tsx';
import { MadeFrom } from './MadeFrom.tsx';
import { WearerField } from './WearerField.tsx';
import { writeGarment } from './write-garment.ts';
import textStyles from '../ui/text.module.css';
import styles from './GarmentSection.module.css';

/** The favourite garment: a drawing of it laid flat, and a field for each measurement. */
export const GarmentSection = memo(function GarmentSection({
  collection,
  bodies,
  tape,
  openQuestions,
}: {
  readonly collection: Collection<GarmentNotes>;
  readonly bodies: Collection<BodyNotes>;
  readonly tape: Tape;
  readonly openQuestions: OpenQuestions;
}) {
  const [active, setActive] = useState<GarmentDimension | null>(null);
  const { notes } = openEntry(collection);
  const ask = useDeferredValue(openQuestions);
  const questions = useMemo(() => ask.ofGarment(), [ask]);
  const { construction, measures, sleeveFrom, thickness, layer, wornStretched, fits, neckline, sleeve, wears } = notes;
  const drawn = useDeferredValue(useMemo(() => flatMeasures({ measures }), [measures]));
  return (
    <>
      <p className={textStyles.lead}>{say.garment.lead}</p>
      <CollectionBar kind="garments" collection={collection} nameLabel={say.garment.name} />
      <WearerField wearer={notes.wearer} bodies={bodies} />
      <MadeFrom madeFrom={notes.madeFrom} growthSince={ask.growthSince} />
      <Choice
        legend={say.garment.construction}
        value={construction}
        options={CONSTRUCTIONS.map((value) => ({ value, label: say.construction[value] }))}
        onValue={(to) => writeGarment((it) => ({ ...it, construction: to }))}
      />
      <div className={styles.flat}>
        <FlatDrawing construction={construction} measures={drawn} sleeveFrom={sleeveFrom} active={active} tape={tape} />
        <ul className={styles.measures} onBlur={() => setActive(null)}>
          {GARMENT_DIMENSIONS.map((name) => (
            <FlatRow
              key={name}
              name={name}
              typed={measures[name]}
              tape={tape}
              confirmed={isConfirmed(notes, name)}
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
        fits={fits}
        neckline={neckline}
        sleeve={sleeve}
        wears={wears}
        tape={tape}
      />
    </>
  );
});
