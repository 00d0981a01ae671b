import { MOST_GARMENTS } from '#target-sheet';
import { openEntry, type Collection, type Entry } from './collection.ts';
import { isBlank } from './kinds.ts';
import { NOBODY, type BodyNotes, type GarmentNotes } from './notebook.ts';

/** Whom a garment fits: a body, by its key, or nobody. The first body where that was not said, or where she is gone. */
export function wearerOfGarment({ wearer }: Pick<GarmentNotes, 'wearer'>, { entries }: Collection<BodyNotes>): string {
  const isThere = wearer === NOBODY || entries.some(({ key }) => key === wearer);
  return isThere && wearer !== null ? wearer : (entries[0]?.key ?? NOBODY);
}

/** The garments that fit the open body. Of more than a sheet takes the first, and always the open one. */
export function garmentsOfBody(
  garments: Collection<GarmentNotes>,
  bodies: Collection<BodyNotes>,
): readonly Entry<GarmentNotes>[] {
  const { key: body } = openEntry(bodies);
  const fitting = garments.entries.filter(
    ({ notes }) => !isBlank('garments', notes) && wearerOfGarment(notes, bodies) === body,
  );
  const first = fitting.slice(0, MOST_GARMENTS);
  const opened = fitting.find(({ key }) => key === garments.open);
  return opened === undefined || first.includes(opened) ? first : [...first.slice(0, -1), opened];
}
