import { Select } from '../field/Select.tsx';
import { say } from '../messages.ts';
import type { Collection } from '../notebook/collection.ts';
import { wearerOfGarment } from '../notebook/garments-of-body.ts';
import { NOBODY, type BodyNotes } from '../notebook/notebook.ts';
import { writeGarment } from './write-garment.ts';

/** Whom a sweater fits, and so tells of; it may be left out. */
export function WearerField({
  wearer,
  bodies,
}: {
  readonly wearer: string | null;
  readonly bodies: Collection<BodyNotes>;
}) {
  const words = say.garment.wearer;
  const named = bodies.entries.map(({ key, notes }, i) => ({
    value: key,
    label: notes.name.trim() || (bodies.entries.length === 1 ? words.me : say.shelf.unnamed(i + 1)),
  }));
  return (
    <Select
      label={words.legend}
      value={wearerOfGarment({ wearer }, bodies)}
      options={[...named, { value: NOBODY, label: words.nobody }]}
      onValue={(to) => writeGarment((it) => ({ ...it, wearer: to }))}
    />
  );
}
