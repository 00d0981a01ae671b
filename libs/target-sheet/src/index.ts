export {
  FORMAT,
  SCHEMA_PATH,
  SHEET_UNITS,
  VERSION,
  type AnyDimension,
  type SheetUnit,
  type TargetSheet,
} from './target-sheet.ts';
export type { SheetInput } from './sheet-input.ts';
export { MM_PER_SHEET_UNIT, RATIO_CHECKS, inUnit } from './in-unit.ts';
