import type { Kind, Kinds } from '../notebook/kinds.ts';
import type { Entry } from '../notebook/collection.ts';
import { toBodyRecord } from './body-record.ts';
import { toGarmentRecord } from './garment-record.ts';
import { toYarnRecord } from './yarn-record.ts';

const RECORDS: { readonly [K in Kind]: (notes: Kinds[K]) => unknown } = {
  bodies: toBodyRecord,
  garments: toGarmentRecord,
  yarns: toYarnRecord,
};

/** What would be stored, as text: two versions are the same where these are. */
export const recordText = <K extends Kind>(kind: K, notes: Kinds[K]): string => JSON.stringify(RECORDS[kind](notes));

/** True where the entry differs from what the store was last seen to hold. */
export const isChanged = <K extends Kind>(kind: K, entry: Entry<Kinds[K]>): boolean =>
  entry.stored === null || entry.stored.seen !== recordText(kind, entry.notes);
