import { memo, useDeferredValue } from 'react';
import { CRAFTS } from '#fabric';
import { Choice } from '../field/Choice.tsx';
import { say } from '../messages.ts';
import type { YarnNotes } from '../notebook/notebook.ts';
import { openEntry, type Collection } from '../notebook/collection.ts';
import { CollectionBar } from '../collections/CollectionBar.tsx';
import type { Tape } from '../notebook/typed.ts';
import { SwatchFields } from './SwatchFields.tsx';
import { writeYarn } from './write-yarn.ts';
import { YarnFields } from './YarnFields.tsx';
import { YarnRoom } from './YarnRoom.tsx';
import textStyles from '../ui/text.module.css';
import styles from './YarnSection.module.css';

/** The yarn, from a swatch or its label, and a drawing of the room that its thickness takes. */
export const YarnSection = memo(function YarnSection({
  collection,
  tape,
  flatMm,
  bodyMm,
}: {
  readonly collection: Collection<YarnNotes>;
  readonly tape: Tape;
  /** Twice the flat width to draw the room of. */
  readonly flatMm: number;
  readonly bodyMm: number | null;
}) {
  const words = say.yarn;
  const { notes } = openEntry(collection);
  const drawn = useDeferredValue(notes);
  return (
    <>
      <p className={textStyles.lead}>{words.lead}</p>
      <CollectionBar kind="yarns" collection={collection} nameLabel={words.name} />
      <Choice
        legend={words.craft.legend}
        value={notes.craft}
        options={CRAFTS.map((value) => ({ value, label: words.craft[value] }))}
        onValue={(craft) => writeYarn((it) => ({ ...it, craft }))}
      />
      <div className={styles.yarn}>
        <YarnFields notes={notes} tape={tape} />
        <YarnRoom notes={drawn} tape={tape} flatMm={flatMm} bodyMm={bodyMm} />
      </div>
      <SwatchFields notes={notes} tape={tape} />
    </>
  );
});
