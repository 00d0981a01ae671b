import { garmentsOfBody } from '../notebook/garments-of-body.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/collection.ts';
import { recordText } from './record-text.ts';
import { toDesignRecord, toMadeRecord } from '../reading/design-record.ts';

/** All inputs of the sheet as text: two sheets have the same inputs where these are equal. */
export function sheetFingerprint(notebook: Notebook): string {
  const { open } = notebook.garments;
  const garments = garmentsOfBody(notebook).map(({ key, notes }) => [key === open, recordText('garments', notes)]);
  return JSON.stringify([
    recordText('bodies', openEntry(notebook.bodies).notes),
    recordText('yarns', openEntry(notebook.yarns).notes),
    garments,
    toDesignRecord(notebook.design),
    toMadeRecord(notebook.made),
    notebook.design.rules,
  ]);
}
