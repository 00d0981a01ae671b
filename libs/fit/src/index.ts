export * from './design/design.ts';
export * from './messages/advice.ts';
export type { FitRequest } from './inputs/fit-request.ts';
export { advise } from './advice/advise.ts';
export { sensitivities } from './evaluation/sensitivity.ts';
export { type Rule, type RuleName, type Rules, RULES, ruleSource, RULES_VERSION, rulesWith } from './design/rules.ts';
export { BODY_MEASURES } from './inputs/inputs.ts';
export { MADE_MEASURES } from './inputs/made.ts';
export {
  CHOSEN_LENGTH_RECORD,
  DESIGN_RECORD,
  EASE_AS_RECORD,
  EASE_BAND_RECORD,
  EASE_GIRTH_RECORD,
  GIRTH_DIFFERENCE_RECORD,
  OPENING_RECORD,
  type DesignRecord,
  type StoredDesign,
} from './design/design-record.ts';
export { designFromRecord } from './design/design-from-record.ts';
export type * from './messages/index.ts';
export type { FitErrors, MadeUnfit } from './design/fit-errors.ts';
export { madeFromRecord } from './inputs/made-from-record.ts';
export { MADE_PIECE_RECORD, type MadePieceRecord, type StoredMadePiece } from './inputs/made-record.ts';
export { sweaterEvidence, type SweaterEvidence } from './evidence/sweater-evidence.ts';
export type { Sweater, WearerSoFar } from './evidence/sweater.ts';
export { favouritesOf, type Favourites } from './evidence/favourites.ts';
export { garmentNames, resolveWearer, type ResolvedWearer, type WearerBody } from './evidence/resolve-wearer.ts';
export type { GarmentEase, WornGarment } from './evidence/worn-garment.ts';
export { easeOfGarments } from './inputs/ease-of-garments.ts';
export { evidenceNotes } from './evidence/evidence-notes.ts';
export { decideDesign } from './inputs/decide-design.ts';
