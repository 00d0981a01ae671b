export * from './design.ts';
export * from './advice.ts';
export type { FitRequest } from './fit-request.ts';
export { advise } from './advise.ts';
export { sensitivities } from './sensitivity.ts';
export { type Rule, type RuleName, type Rules, RULES, ruleSource, RULES_VERSION, rulesWith } from './rules.ts';
export { BODY_MEASURES } from './inputs.ts';
export { MADE_MEASURES } from './made.ts';
export {
  CHOSEN_LENGTH_RECORD,
  DESIGN_RECORD,
  EASE_BAND_RECORD,
  EASE_GIRTH_RECORD,
  GIRTH_DIFFERENCE_RECORD,
  type DesignRecord,
  type StoredDesign,
} from './design-record.ts';
export { designFromRecord } from './design-from-record.ts';
export type * from './messages/index.ts';
export type { FitErrors, MadeUnfit } from './fit-errors.ts';
export { madeFromRecord } from './made-from-record.ts';
export { MADE_PIECE_RECORD, type MadePieceRecord, type StoredMadePiece } from './made-record.ts';
