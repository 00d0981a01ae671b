import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/collection.ts';
import { garmentsOfBody } from '../notebook/garments-of-body.ts';
import { recordText } from './record-text.ts';
import { toDesignRecord, toMadeRecord } from '../reading/design-record.ts';

/** All inputs of the sheet as text: two sheets have the same inputs where these are equal. */
export function sheetFingerprint(notebook: Notebook): string {
  const { bodies, garments, yarns, design, made } = notebook;
  return JSON.stringify([
    recordText('bodies', openEntry(bodies).notes),
    garmentsOfBody(garments, bodies).map(({ key, notes }) => [key === garments.open, recordText('garments', notes)]),
    recordText('yarns', openEntry(yarns).notes),
    toDesignRecord(design),
    toMadeRecord(made),
    design.rules,
  ]);
}
