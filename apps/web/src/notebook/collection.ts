/** What the API stores of an entry: its id, the version last seen, and the record of that version as text. */
interface Stored {
  readonly id: string;
  readonly etag: string;
  readonly seen: string;
}

/** One body, garment or yarn. */
export interface Entry<T> {
  readonly key: string;
  readonly notes: T;
  readonly stored: Stored | null;
  /** The API's version, where both versions changed; its notes are null where it was deleted there. */
  readonly conflict: { readonly notes: T | null; readonly etag: string } | null;
  /** Why the API rejected the entry, in its words. */
  readonly refused: string | null;
}

/** The entries of one kind, one of them open. Never empty. */
export interface Collection<T> {
  readonly open: string;
  readonly entries: readonly Entry<T>[];
  /** Removed here, still to be deleted through the API. */
  readonly removed: readonly { readonly id: string; readonly etag: string }[];
}

export function newEntry<T>(key: string, notes: T): Entry<T> {
  return { key, notes, stored: null, conflict: null, refused: null };
}

export function newCollection<T>(key: string, notes: T): Collection<T> {
  return { open: key, entries: [newEntry(key, notes)], removed: [] };
}

export function openEntry<T>(collection: Collection<T>): Entry<T> {
  const entry = collection.entries.find(({ key }) => key === collection.open) ?? collection.entries[0];
  if (entry === undefined) throw new Error('A shelf is never empty.');
  return entry;
}

export function withEntry<T>(
  collection: Collection<T>,
  key: string,
  change: (entry: Entry<T>) => Entry<T>,
): Collection<T> {
  return { ...collection, entries: collection.entries.map((entry) => (entry.key === key ? change(entry) : entry)) };
}

/** The open entry with changed notes. */
export function withNotes<T>(collection: Collection<T>, change: (notes: T) => T): Collection<T> {
  return withEntry(collection, openEntry(collection).key, (entry) => ({
    ...entry,
    notes: change(entry.notes),
    refused: null,
  }));
}

export function withAdded<T>(collection: Collection<T>, entry: Entry<T>): Collection<T> {
  return { ...collection, open: entry.key, entries: [...collection.entries, entry] };
}

/** Removes an entry; `spare` replaces the last one. */
export function withoutEntry<T>(collection: Collection<T>, key: string, spare: Entry<T>): Collection<T> {
  const gone = collection.entries.find((entry) => entry.key === key);
  const rest = collection.entries.filter((entry) => entry.key !== key);
  const entries = rest.length > 0 ? rest : [spare];
  const removed = gone?.stored
    ? [...collection.removed, { id: gone.stored.id, etag: gone.stored.etag }]
    : collection.removed;
  return { open: collection.open === key ? (entries[0] ?? spare).key : collection.open, entries, removed };
}
