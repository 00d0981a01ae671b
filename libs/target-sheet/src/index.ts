export {
  FORMAT,
  SCHEMA_ID,
  SHEET_UNITS,
  VERSION,
  type AnyDimension,
  type SheetUnit,
  type TargetSheet,
} from './target-sheet.ts';
export type { SheetGarment, SheetInput } from './sheet-input.ts';
export {
  MOST_GARMENTS,
  SHEET_GARMENT_RECORD,
  sheetGarmentFromRecord,
  type SheetGarmentRecord,
  type StoredSheetGarment,
} from './sheet-garment-record.ts';
export { atPointer } from './at-pointer.ts';
export { wearerOf } from './wearer.ts';
export { MM_PER_SHEET_UNIT, inUnit } from './in-unit.ts';
export { RATIO_CHECKS } from './ratio-checks.ts';
export { MAX_TITLE, targetSheetSchema } from './schema/target-sheet-schema.ts';
export type { JsonSchema } from './schema/json-schema.ts';
export { validateAgainst } from './schema/validate.ts';
export { fromEarlier, withoutGoneRules } from './from-earlier.ts';
export { readSheet } from './read-sheet.ts';
export { csvLine, toCsv } from './csv.ts';
export { toText } from './to-text.ts';
export { toSvg } from './to-svg.ts';
export { schematic, type Schematic } from './drawing/schematic.ts';
export type { Words, PlacedPiece } from './drawing/flow.ts';
export type { DrawnOpening } from './drawing/draw-opening.ts';
export type { DrawnPiece, Line, Measure } from './drawing/draw-piece.ts';
export type { Point } from './drawing/plane.ts';
export { composeSheet } from './compose-sheet.ts';
export { withText, type AdviceInWords } from './with-text.ts';
export type * from './sheet-parts.ts';
export { garmentBesideBody } from './garment-beside-body.ts';
export { nextToTake, type NextToTake } from './next-to-take.ts';
export { growthLearned, type GrowthInDirection, type GrowthLearned, type GrowthOfMeasure } from './growth-learned.ts';
