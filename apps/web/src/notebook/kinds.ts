import { blankBody, blankGarment, blankYarn } from './blank.ts';
import type { BodyNotes, GarmentNotes, Notebook, YarnNotes } from './notebook.ts';
import { newKey } from './new-key.ts';
import { newEntry, withAdded, withoutEntry, type Entry, type Collection } from './collection.ts';
import type { Tape } from './typed.ts';

/** The three shelves, and what lies on each. */
export interface Kinds {
  readonly bodies: BodyNotes;
  readonly garments: GarmentNotes;
  readonly yarns: YarnNotes;
}
export const KINDS = ['bodies', 'garments', 'yarns'] as const satisfies readonly (keyof Kinds)[];
export type Kind = keyof Kinds;

const BLANK: { readonly [K in Kind]: (tape: Tape) => Kinds[K] } = {
  bodies: () => blankBody(),
  garments: blankGarment,
  yarns: blankYarn,
};

export const collectionOf = <K extends Kind>(notebook: Notebook, kind: K): Collection<Kinds[K]> =>
  notebook[kind] as unknown as Collection<Kinds[K]>;

export const updateCollection = <K extends Kind>(
  notebook: Notebook,
  kind: K,
  how: (collection: Collection<Kinds[K]>) => Collection<Kinds[K]>,
): Notebook => ({ ...notebook, [kind]: how(collectionOf(notebook, kind)) });

const blankEntry = <K extends Kind>(kind: K, tape: Tape): Entry<Kinds[K]> =>
  newEntry<Kinds[K]>(newKey(), BLANK[kind](tape));

/** True while nothing was written on it. */
export function isBlank<K extends Kind>(kind: K, notes: Kinds[K]): boolean {
  const plain = (value: unknown): string =>
    JSON.stringify(value, (key, inner: unknown) => (['tape', 'record', 'wearer'].includes(key) ? undefined : inner));
  return plain(notes) === plain(BLANK[kind]('cm'));
}

export const added = <K extends Kind>(notebook: Notebook, kind: K): Notebook =>
  updateCollection(notebook, kind, (collection) => withAdded(collection, forOpenBody(notebook, kind)));

/** A new garment is of the body that is open. */
function forOpenBody<K extends Kind>(notebook: Notebook, kind: K): Entry<Kinds[K]> {
  const entry = blankEntry(kind, notebook.tape);
  return kind === 'garments' ? { ...entry, notes: { ...entry.notes, wearer: notebook.bodies.open } } : entry;
}

export const removed = <K extends Kind>(notebook: Notebook, kind: K, key: string): Notebook =>
  updateCollection(notebook, kind, (collection) => withoutEntry(collection, key, blankEntry(kind, notebook.tape)));

/** Brought back as something the store does not know: it is stored anew. */
export const restored = <K extends Kind>(notebook: Notebook, kind: K, entry: Entry<Kinds[K]>): Notebook =>
  updateCollection(notebook, kind, (collection) => withAdded(collection, newEntry(entry.key, entry.notes)));
