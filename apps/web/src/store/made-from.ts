import { KINDS, shelfOf } from '../notebook/kinds.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/shelf.ts';
import { asStored } from './as-stored.ts';
import { toDesignRecord, toMadeRecord } from './design-record.ts';

/** Everything a sheet is made from just now, as text: two sheets are made from the same where these are the same. */
export function madeFrom(notebook: Notebook): string {
  const entries = KINDS.map((kind) => asStored(kind, openEntry(shelfOf(notebook, kind)).notes));
  return JSON.stringify([
    ...entries,
    toDesignRecord(notebook.design),
    toMadeRecord(notebook.made),
    notebook.design.rules,
  ]);
}
