export { checkTakes } from './check-takes.ts';
export { escapeToken } from './json-pointer.ts';
export type { MappingWarning } from './formats/format.ts';
export { mapSheet, payloadText, type MappedSheet } from './map-sheet.ts';
export type { MissingName } from './missing-names.ts';
export {
  namesOf,
  parseOurName,
  PARTS,
  SHEET_FACTS,
  type DimensionName,
  type Part,
  type SheetFact,
} from './our-name.ts';
export { PLANNER_RECORD, TAKES_RECORD } from './planner-record.ts';
export { PLANNER_FORMATS, type Json, type PlannerFormat, type PlannerTakes } from './planner-takes.ts';
