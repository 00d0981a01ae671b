import { resolveBody, type BodyProfile, type Estimator } from '#body';
import { DomainError } from '#measure';
import { composeSheet, type SheetInput, type TargetSheet } from '#target-sheet';
import type { Notebook } from '../notebook/notebook.ts';
import type { Reckoned } from './reckoned.ts';
import { toSheetInput } from './to-sheet-input.ts';

/** The preview is the computation; only a sheet that is kept has an id and a time. */
const PREVIEW = { id: '', createdAt: '' };

/** What a maker with an empty page has not written yet; nothing to complain about. */
const TOO_LITTLE = ['body-missing', 'garment-chest-width-missing'];

export function reckon(notebook: Notebook, estimator?: Estimator): Reckoned {
  const input = toSheetInput(notebook, 'mm');
  return { input, profile: profileOf(input.body, estimator), ...sheetOf(input, estimator), questions: {}, next: null };
}

function profileOf(body: SheetInput['body'], estimator: Estimator | undefined): BodyProfile | null {
  return body && resolveBody(body, { estimate: body.estimate, ...(estimator && { estimator }) });
}

function sheetOf(input: SheetInput, estimator: Estimator | undefined): Pick<Reckoned, 'sheet' | 'cannot'> {
  try {
    return { sheet: composeSheet(input, PREVIEW, { estimator }), cannot: null };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { sheet: null, cannot: TOO_LITTLE.includes(error.code) ? null : error.message };
  }
}

/** A sheet to keep or to take along, with an id and a time of its own. */
export function makeSheet(notebook: Notebook, id: string, estimator?: Estimator): TargetSheet {
  return composeSheet(toSheetInput(notebook, 'mm'), { id, createdAt: new Date().toISOString() }, { estimator });
}

/** The sheet as it would be with nothing finished yet; null where there is none. */
export function plannedSheet(notebook: Notebook, estimator?: Estimator): TargetSheet | null {
  return sheetOf(toSheetInput({ ...notebook, made: {} }, 'mm'), estimator).sheet;
}
