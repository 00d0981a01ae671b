import type { Kind, Kinds } from '../notebook/kinds.ts';
import type { Entry } from '../notebook/collection.ts';
import { TO_RECORD } from './to-record.ts';

/** What would be stored, as text: two versions are the same where these are. */
export const recordText = <K extends Kind>(kind: K, notes: Kinds[K]): string => JSON.stringify(TO_RECORD[kind](notes));

/** True where the entry differs from what the store was last seen to hold. */
export const isChanged = <K extends Kind>(kind: K, entry: Entry<Kinds[K]>): boolean =>
  entry.stored === null || entry.stored.seen !== recordText(kind, entry.notes);
