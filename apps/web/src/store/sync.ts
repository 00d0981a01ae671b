import { whenKeptChanged } from '../kept/use-kept-sheets.ts';
import { isBlank, KINDS, onShelf, shelfOf, type Kind, type Kinds } from '../notebook/kinds.ts';
import { newKey } from '../notebook/new-key.ts';
import { newEntry, withEntry, type Entry, type Shelf } from '../notebook/shelf.ts';
import { change, notebook, rereadHere, whenChanged } from '../notebook/use-notebook.ts';
import { asStored, isChanged } from './as-stored.ts';
import { STORES, type Kept } from './kinds-in-store.ts';
import { setReach } from './reach.ts';
import { anyStored, fetchSheets, hasSheetWork, storeSheets } from './sync-sheets.ts';

/** After the last key, before it is stored. */
const PAUSE_MS = 1200;
const RETRY_MS = 5000;
const LONGEST_RETRY_MS = 60_000;

/** Keeps the notebook and the store alike: what was changed here goes there, what was changed elsewhere comes here. Returns what ends it. */
export function startSync(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let retry = RETRY_MS;
  let ended = false;

  const after = (ms: number, whole: boolean): void => {
    clearTimeout(timer);
    if (!ended) timer = setTimeout(() => void round(whole), ms);
  };
  const round = async (whole: boolean): Promise<void> => {
    if (!whole && !anyWork()) return;
    try {
      await alone(async () => {
        rereadHere();
        if (whole) for (const kind of KINDS) await fetchKind(kind);
        const stores = KINDS.some(hasWork);
        for (const kind of KINDS) await storeKind(kind);
        // What is stored may be what a stored sheet was made from.
        if (whole || (stores && anyStored())) await fetchSheets();
        await storeSheets();
      });
      setReach('reached');
      retry = RETRY_MS;
      if (anyWork()) after(PAUSE_MS, false);
    } catch {
      setReach('lost');
      after(retry, true);
      retry = Math.min(retry * 2, LONGEST_RETRY_MS);
    }
  };

  const soon = (): void => after(0, true);
  const seen = (): void => {
    if (document.visibilityState === 'visible') soon();
  };
  const ends = [whenChanged(() => after(PAUSE_MS, false)), whenKeptChanged(() => after(PAUSE_MS, false))];
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

/** One window at a time, where the browser can see to it. */
async function alone(work: () => Promise<void>): Promise<void> {
  if ('locks' in navigator) await navigator.locks.request('easewright-store', work);
  else await work();
}

const anyWork = (): boolean => KINDS.some(hasWork) || hasSheetWork();

const toStore = <K extends Kind>(kind: K, entry: Entry<Kinds[K]>): boolean =>
  entry.conflict === null &&
  entry.refused === null &&
  isChanged(kind, entry) &&
  (entry.stored !== null || !isBlank(kind, entry.notes));

function hasWork<K extends Kind>(kind: K): boolean {
  const shelf = shelfOf(notebook(), kind);
  return shelf.removed.length > 0 || shelf.entries.some((entry) => toStore(kind, entry));
}

const onEntry = <K extends Kind>(kind: K, key: string, how: (entry: Entry<Kinds[K]>) => Entry<Kinds[K]>): void =>
  change((it) => onShelf(it, kind, (shelf) => withEntry(shelf, key, how)));

/** Sends what was removed and changed here. Throws when the store cannot be reached. */
async function storeKind<K extends Kind>(kind: K): Promise<void> {
  const store = STORES[kind];
  for (const { id, etag } of shelfOf(notebook(), kind).removed) {
    await store.remove(id, etag);
    change((it) =>
      onShelf(it, kind, (shelf) => ({ ...shelf, removed: shelf.removed.filter((gone) => gone.id !== id) })),
    );
  }
  for (const entry of shelfOf(notebook(), kind).entries) if (toStore(kind, entry)) await storeEntry(kind, entry);
}

async function storeEntry<K extends Kind>(kind: K, entry: Entry<Kinds[K]>): Promise<void> {
  const store = STORES[kind];
  const { notes, stored, key } = entry;
  const sent = asStored(kind, notes);
  const result = stored === null ? await store.add(notes) : await store.put(stored.id, stored.etag, notes);
  if (result.is === 'kept') {
    const { id, etag } = result.kept;
    const still = shelfOf(notebook(), kind).entries.some((it) => it.key === key);
    if (still) onEntry(kind, key, (it) => ({ ...it, stored: { id, etag, seen: sent } }));
    else change((it) => onShelf(it, kind, (shelf) => ({ ...shelf, removed: [...shelf.removed, { id, etag }] })));
    return;
  }
  if (stored !== null && result.status === 412) {
    const newer = await store.one(stored.id);
    if (newer.is === 'kept') onEntry(kind, key, (it) => meeting(kind, it, newer.kept));
    return;
  }
  if (stored !== null && result.status === 404) {
    onEntry(kind, key, (it) => ({ ...it, conflict: { notes: null, etag: '' } }));
    return;
  }
  onEntry(kind, key, (it) => ({ ...it, refused: result.why }));
}

/** Brings what was changed elsewhere. Throws when the store cannot be reached. */
async function fetchKind<K extends Kind>(kind: K): Promise<void> {
  const listed = await STORES[kind].list();
  change((it) => onShelf(it, kind, (shelf) => merged(kind, shelf, listed)));
}

function merged<K extends Kind>(kind: K, shelf: Shelf<Kinds[K]>, listed: readonly Kept<Kinds[K]>[]): Shelf<Kinds[K]> {
  const byId = new Map(listed.map((kept) => [kept.id, kept]));
  const entries = shelf.entries.map((entry) => {
    if (entry.stored === null) return entry;
    const kept = byId.get(entry.stored.id);
    if (kept === undefined) return { ...entry, conflict: { notes: null, etag: '' } };
    return kept.etag === entry.stored.etag ? entry : meeting(kind, entry, kept);
  });
  const known = new Set([...shelf.entries.map(({ stored }) => stored?.id), ...shelf.removed.map(({ id }) => id)]);
  const arrived = listed
    .filter(({ id }) => !known.has(id))
    .map((kept): Entry<Kinds[K]> => {
      const stored = { id: kept.id, etag: kept.etag, seen: asStored(kind, kept.notes) };
      return { ...newEntry(newKey(), kept.notes), stored };
    });
  if (arrived.length === 0) {
    const same = entries.every((entry, i) => entry === shelf.entries[i]);
    return same ? shelf : { ...shelf, entries };
  }
  const blank =
    entries.length === 1 && entries[0] !== undefined && entries[0].stored === null && isBlank(kind, entries[0].notes);
  const all = blank ? arrived : [...entries, ...arrived];
  return { ...shelf, entries: all, open: all.some(({ key }) => key === shelf.open) ? shelf.open : (all[0]?.key ?? '') };
}

/** An entry and a newer version of it: the same, the newer one, or a question. */
function meeting<K extends Kind>(kind: K, entry: Entry<Kinds[K]>, kept: Kept<Kinds[K]>): Entry<Kinds[K]> {
  const theirs = asStored(kind, kept.notes);
  const stored = { id: kept.id, etag: kept.etag, seen: theirs };
  if (asStored(kind, entry.notes) === theirs) return { ...entry, stored, conflict: null };
  if (!isChanged(kind, entry)) return { ...entry, notes: kept.notes, stored, conflict: null };
  return { ...entry, conflict: { notes: kept.notes, etag: kept.etag } };
}
