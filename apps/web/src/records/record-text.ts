import type { Kind, Kinds } from '../notebook/kinds.ts';
import type { Entry } from '../notebook/collection.ts';
import { TO_RECORD } from './to-record.ts';

/** The record of an entry as text: two versions are equal where their texts are. */
export const recordText = <K extends Kind>(kind: K, notes: Kinds[K]): string => JSON.stringify(TO_RECORD[kind](notes));

/** True where the entry differs from the last stored version that was seen. */
export const isChanged = <K extends Kind>(kind: K, entry: Entry<Kinds[K]>): boolean =>
  entry.stored === null || entry.stored.seen !== recordText(kind, entry.notes);
