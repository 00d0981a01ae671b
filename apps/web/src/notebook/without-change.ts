import { isBlank, KINDS, updateCollection, removed, restored, collectionOf, type Kind, type Kinds } from './kinds.ts';
import type { DesignNotes, Notebook } from './notebook.ts';

/** Undoes one change to the notebook; what was entered after it stays. */
export function withoutChange(now: Notebook, before: Notebook, after: Notebook): Notebook {
  const withDesignAndMade: Notebook = {
    ...now,
    design: designWithout(now.design, before.design, after.design),
    made: fieldsWithout(now.made, before.made, after.made),
  };
  return KINDS.reduce((it, kind) => collectionWithout(it, kind, before, after), withDesignAndMade);
}

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Restores every field that the change touched and that has not changed since. */
function fieldsWithout<T extends object>(now: T, before: T, after: T): T {
  const [is, was, became] = [now, before, after].map((it) => new Map<string, unknown>(Object.entries(it)));
  const names = Object.keys({ ...now, ...before });
  const fields = names.map((name) => {
    const [value, old, changed] = [is?.get(name), was?.get(name), became?.get(name)];
    return [name, !same(old, changed) && same(value, changed) ? old : value];
  });
  return Object.fromEntries(fields.filter(([, value]) => value !== undefined)) as T;
}

function designWithout(now: DesignNotes, before: DesignNotes, after: DesignNotes): DesignNotes {
  const back = fieldsWithout(now, before, after);
  return {
    ...back,
    lengths: fieldsWithout(now.lengths, before.lengths, after.lengths),
    rules: fieldsWithout(now.rules, before.rules, after.rules),
    // The maker's own number, entered after the change, still counts.
    ease: same(now.ownEase, after.ownEase) ? back.ease : now.ease,
    length: same(now.lengths.customLength, after.lengths.customLength) ? back.length : now.length,
  };
}

/**
 * Restores what the change removed from a collection and what it wrote in an entry, and removes what it added unless that was changed
 * since. The entry that was open is open again, unless another was opened since.
 */
function collectionWithout<K extends Kind>(now: Notebook, kind: K, before: Notebook, after: Notebook): Notebook {
  const [is, was, became] = [collectionOf(now, kind), collectionOf(before, kind), collectionOf(after, kind)];
  const has = ({ entries }: Pick<typeof is, 'entries'>, sought: string): boolean =>
    entries.some(({ key }) => key === sought);
  const gone = became.entries.filter(
    ({ key, notes }) => !has(was, key) && is.entries.some((entry) => entry.key === key && same(entry.notes, notes)),
  );
  const stayed = is.open === became.open && has({ entries: [...was.entries, ...gone] }, is.open);
  const back = was.entries.filter(
    ({ key, notes }) => !has(became, key) && !has(is, key) && (!isBlank(kind, notes) || (stayed && key === was.open)),
  );
  const filled = back.reduce((it, entry) => restored(it, kind, entry), now);
  const cleared = gone.reduce((it, { key }) => removed(it, kind, key), filled);
  return updateCollection(cleared, kind, (collection) => ({
    ...collection,
    open: stayed && has(collection, was.open) ? was.open : collection.open,
    entries: collection.entries.map((entry) => {
      const [old, changed] = [was, became].map(({ entries }) => entries.find(({ key }) => key === entry.key)?.notes);
      if (old === undefined || changed === undefined || same(old, changed)) return entry;
      return { ...entry, notes: fieldsWithout<Kinds[K] & object>(entry.notes, old, changed) };
    }),
  }));
}
