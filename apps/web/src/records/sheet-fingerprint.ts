import { KINDS, collectionOf } from '../notebook/kinds.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/collection.ts';
import { recordText } from './record-text.ts';
import { toDesignRecord, toMadeRecord } from '../reading/design-record.ts';

/** Everything a sheet is made from just now, as text: two sheets are made from the same where these are the same. */
export function sheetFingerprint(notebook: Notebook): string {
  const entries = KINDS.map((kind) => recordText(kind, openEntry(collectionOf(notebook, kind)).notes));
  return JSON.stringify([
    ...entries,
    toDesignRecord(notebook.design),
    toMadeRecord(notebook.made),
    notebook.design.rules,
  ]);
}
