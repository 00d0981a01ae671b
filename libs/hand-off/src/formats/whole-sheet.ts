import { inUnit, type TargetSheet } from '#target-sheet';
import { plannerError } from '../planner-error.ts';
import type { Json } from '../planner-takes.ts';
import type { Format } from './format.ts';

/** A sheet is plain JSON data already. */
const asJson = (sheet: TargetSheet): Json => sheet as unknown as Json;

/** The sheet itself, under its own names and unrounded: its terms would no longer add up. */
export const wholeSheet: Format = {
  contentType: 'application/json',
  rounds: false,
  nameFaults: (names) => (Object.keys(names).length === 0 ? [] : [plannerError('naming-a-sheet', {}, '/names')]),
  write: (sheet, { unit }) => ({ payload: asJson(inUnit(sheet, unit)), warnings: [] }),
};
