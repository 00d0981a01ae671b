import { KINDS, collectionOf } from '../notebook/kinds.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/collection.ts';
import { recordText } from './record-text.ts';
import { toDesignRecord, toMadeRecord } from '../reading/design-record.ts';

/** All inputs of the sheet as text: two sheets have the same inputs where these are equal. */
export function sheetFingerprint(notebook: Notebook): string {
  const entries = KINDS.map((kind) => recordText(kind, openEntry(collectionOf(notebook, kind)).notes));
  return JSON.stringify([
    ...entries,
    toDesignRecord(notebook.design),
    toMadeRecord(notebook.made),
    notebook.design.rules,
  ]);
}
