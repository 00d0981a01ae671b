import { MOST_GARMENTS } from '#target-sheet';
import { openEntry, type Entry } from './collection.ts';
import { isBlank } from './kinds.ts';
import { NOBODY, type GarmentNotes, type Notebook } from './notebook.ts';

type GarmentEntry = Entry<GarmentNotes>;

/** Whether a sweater counts for the open body. One of which that was not said counts while it is open, and where there is but one body. */
export function countsForBody({ bodies, garments }: Notebook, { key, notes: { wearer } }: GarmentEntry): boolean {
  if (wearer === NOBODY) return false;
  const isSaid = bodies.entries.some((body) => body.key === wearer);
  if (isSaid) return wearer === openEntry(bodies).key;
  return key === openEntry(garments).key || bodies.entries.length === 1;
}

/** The sweaters that count for the open body; with more than a sheet takes, the first, and always the open one. */
export function garmentsOfBody(notebook: Notebook): readonly GarmentEntry[] {
  const { key: open } = openEntry(notebook.garments);
  const counting = notebook.garments.entries.filter(
    (entry) => !isBlank('garments', entry.notes) && countsForBody(notebook, entry),
  );
  const first = counting.slice(0, MOST_GARMENTS);
  const opened = counting.find(({ key }) => key === open);
  return opened === undefined || first.includes(opened) ? first : [...first.slice(0, -1), opened];
}
