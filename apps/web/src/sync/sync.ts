import { pageStore } from '../state/page-store.ts';
import { isBlank, KINDS, updateCollection, collectionOf, type Kind, type Kinds } from '../notebook/kinds.ts';
import { newKey } from '../notebook/new-key.ts';
import { newEntry, withEntry, type Entry, type Collection } from '../notebook/collection.ts';
import { updateNotebook, currentNotebook, reloadNotebook } from '../state/notebook.ts';
import { recordText, isChanged } from '../records/record-text.ts';
import { REPOSITORIES, type Kept } from '../api/record-repositories.ts';
import { anyStored, fetchSheets, hasPendingSheets, storeSheets } from './sync-sheets.ts';

/** The pause after the last key press before the change is sent. */
const PAUSE_MS = 1200;
const RETRY_MS = 5000;
const LONGEST_RETRY_MS = 60_000;

/** Keeps the notebook and the API in step, in both directions. Returns a function that stops it. */
export function startSync(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let retry = RETRY_MS;
  let ended = false;

  const after = (ms: number, whole: boolean): void => {
    clearTimeout(timer);
    if (!ended) timer = setTimeout(() => void round(whole), ms);
  };
  const round = async (whole: boolean): Promise<void> => {
    if (!whole && !hasPendingWork()) return;
    try {
      await exclusively(async () => {
        reloadNotebook();
        if (whole) for (const kind of KINDS) await fetchRecords(kind);
        const stores = KINDS.some(hasPendingRecords);
        for (const kind of KINDS) await storeRecords(kind);
        // A changed record may be an input of a stored sheet.
        if (whole || (stores && anyStored())) await fetchSheets();
        await storeSheets();
      });
      pageStore.setState({ serverReach: 'reached' });
      retry = RETRY_MS;
      if (hasPendingWork()) after(PAUSE_MS, false);
    } catch {
      pageStore.setState({ serverReach: 'lost' });
      after(retry, true);
      retry = Math.min(retry * 2, LONGEST_RETRY_MS);
    }
  };

  const soon = (): void => after(0, true);
  const seen = (): void => {
    if (document.visibilityState === 'visible') soon();
  };
  const ends = [
    pageStore.subscribe((now, before) => {
      if (now.notebook !== before.notebook || now.keptSheets !== before.keptSheets) after(PAUSE_MS, false);
    }),
  ];
  window.addEventListener('online', soon);
  document.addEventListener('visibilitychange', seen);
  ends.push(() => window.removeEventListener('online', soon));
  ends.push(() => document.removeEventListener('visibilitychange', seen));
  soon();
  return () => {
    ended = true;
    clearTimeout(timer);
    ends.forEach((end) => end());
  };
}

/** Runs in one tab at a time, where the browser has locks. */
async function exclusively(work: () => Promise<void>): Promise<void> {
  if ('locks' in navigator) await navigator.locks.request('easewright-store', work);
  else await work();
}

const hasPendingWork = (): boolean => KINDS.some(hasPendingRecords) || hasPendingSheets();

const needsStoring = <K extends Kind>(kind: K, entry: Entry<Kinds[K]>): boolean =>
  entry.conflict === null &&
  entry.refused === null &&
  isChanged(kind, entry) &&
  (entry.stored !== null || !isBlank(kind, entry.notes));

function hasPendingRecords<K extends Kind>(kind: K): boolean {
  const collection = collectionOf(currentNotebook(), kind);
  return collection.removed.length > 0 || collection.entries.some((entry) => needsStoring(kind, entry));
}

const onEntry = <K extends Kind>(kind: K, key: string, how: (entry: Entry<Kinds[K]>) => Entry<Kinds[K]>): void =>
  updateNotebook((it) => updateCollection(it, kind, (collection) => withEntry(collection, key, how)));

/** Sends the removals and changes of this browser. Throws when the server cannot be reached. */
async function storeRecords<K extends Kind>(kind: K): Promise<void> {
  const store = REPOSITORIES[kind];
  for (const { id, etag } of collectionOf(currentNotebook(), kind).removed) {
    await store.remove(id, etag);
    updateNotebook((it) =>
      updateCollection(it, kind, (collection) => ({
        ...collection,
        removed: collection.removed.filter((gone) => gone.id !== id),
      })),
    );
  }
  for (const entry of collectionOf(currentNotebook(), kind).entries)
    if (needsStoring(kind, entry)) await storeEntry(kind, entry);
}

async function storeEntry<K extends Kind>(kind: K, entry: Entry<Kinds[K]>): Promise<void> {
  const store = REPOSITORIES[kind];
  const { notes, stored, key } = entry;
  const sent = recordText(kind, notes);
  const result = stored === null ? await store.add(notes) : await store.put(stored.id, stored.etag, notes);
  if (result.is === 'kept') {
    const { id, etag } = result.kept;
    const still = collectionOf(currentNotebook(), kind).entries.some((it) => it.key === key);
    if (still) onEntry(kind, key, (it) => ({ ...it, stored: { id, etag, seen: sent } }));
    else
      updateNotebook((it) =>
        updateCollection(it, kind, (collection) => ({ ...collection, removed: [...collection.removed, { id, etag }] })),
      );
    return;
  }
  if (stored !== null && result.status === 412) {
    const newer = await store.one(stored.id);
    if (newer.is === 'kept') onEntry(kind, key, (it) => reconciled(kind, it, newer.kept));
    return;
  }
  if (stored !== null && result.status === 404) {
    onEntry(kind, key, (it) => ({ ...it, conflict: { notes: null, etag: '' } }));
    return;
  }
  onEntry(kind, key, (it) => ({ ...it, refused: result.why }));
}

/** Fetches the changes made elsewhere. Throws when the server cannot be reached. */
async function fetchRecords<K extends Kind>(kind: K): Promise<void> {
  const listed = await REPOSITORIES[kind].list();
  updateNotebook((it) => updateCollection(it, kind, (collection) => merged(kind, collection, listed)));
}

function merged<K extends Kind>(
  kind: K,
  collection: Collection<Kinds[K]>,
  listed: readonly Kept<Kinds[K]>[],
): Collection<Kinds[K]> {
  const byId = new Map(listed.map((kept) => [kept.id, kept]));
  const entries = collection.entries.map((entry) => {
    if (entry.stored === null) return entry;
    const kept = byId.get(entry.stored.id);
    if (kept === undefined) return { ...entry, conflict: { notes: null, etag: '' } };
    return kept.etag === entry.stored.etag ? withRecord(kind, entry, kept) : reconciled(kind, entry, kept);
  });
  const known = new Set([
    ...collection.entries.map(({ stored }) => stored?.id),
    ...collection.removed.map(({ id }) => id),
  ]);
  const arrived = listed
    .filter(({ id }) => !known.has(id))
    .map((kept): Entry<Kinds[K]> => {
      const stored = { id: kept.id, etag: kept.etag, seen: recordText(kind, kept.notes) };
      return { ...newEntry(newKey(), kept.notes), stored };
    });
  if (arrived.length === 0) {
    const same = entries.every((entry, i) => entry === collection.entries[i]);
    return same ? collection : { ...collection, entries };
  }
  const blank =
    entries.length === 1 && entries[0] !== undefined && entries[0].stored === null && isBlank(kind, entries[0].notes);
  const all = blank ? arrived : [...entries, ...arrived];
  return {
    ...collection,
    entries: all,
    open: all.some(({ key }) => key === collection.open) ? collection.open : (all[0]?.key ?? ''),
  };
}

/** An entry that began in this browser, with the record that the API stored: the fields beyond the notes are kept from then on. */
function withRecord<K extends Kind>(kind: K, entry: Entry<Kinds[K]>, kept: Kept<Kinds[K]>): Entry<Kinds[K]> {
  if (entry.notes.record !== undefined) return entry;
  const notes = { ...entry.notes, record: kept.notes.record };
  return { ...entry, notes, stored: { id: kept.id, etag: kept.etag, seen: recordText(kind, kept.notes) } };
}

/** Reconciles an entry with a newer version: they are equal, or the newer one wins, or they conflict. */
function reconciled<K extends Kind>(kind: K, entry: Entry<Kinds[K]>, kept: Kept<Kinds[K]>): Entry<Kinds[K]> {
  const theirs = recordText(kind, kept.notes);
  const stored = { id: kept.id, etag: kept.etag, seen: theirs };
  if (recordText(kind, entry.notes) === theirs) return { ...entry, stored, conflict: null };
  if (!isChanged(kind, entry)) return { ...entry, notes: kept.notes, stored, conflict: null };
  return { ...entry, conflict: { notes: kept.notes, etag: kept.etag } };
}
