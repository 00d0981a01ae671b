export { FORMAT, SCHEMA_PATH, VERSION, type SheetUnit, type TargetSheet } from './target-sheet.ts';
export type { SheetInput } from './sheet-input.ts';
