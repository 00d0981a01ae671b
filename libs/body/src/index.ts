export { BODY_DIMENSIONS, type BodyDimension } from './body-dimension.ts';
export type { BodyErrors } from './body-errors.ts';
export { bodyProblems } from './body-problems.ts';
export { FIGURES, type Body, type BodyMeasure, type Figure } from './body.ts';
export type { BodyMissing, BodyMissingCodes } from './missing-codes.ts';
export type { BodyNote, BodyNoteCodes } from './note-codes.ts';
export type { BodySource, BodySourceCodes } from './source-codes.ts';
export type { BodyProfile, ProfileCovariance, ProfileValue } from './body-profile.ts';
export { bodyFromEvidence, type BodyFromEvidence, type EvidenceInput } from './evidence/body-from-evidence.ts';
export { inMillimetres, type PosteriorInMillimetres } from './evidence/in-millimetres.ts';
export { compareWith, type Comparison } from './evidence/compare.ts';
export type { BentTerm, HiddenNumber, LogGaussian, Observation } from './evidence/observation.ts';
export type { Contradiction } from './evidence/weigh.ts';
export { resolveWithEvidence, type Evidence, type ResolvedWithEvidence } from './evidence/resolve-with-evidence.ts';
export { updateByObservations, type EvidencePosterior } from './evidence/update.ts';
export { defaultU, type DefaultU } from './default-u.ts';
export type { Estimate, Estimates, Estimator, EstimatorInput, KnownValue } from './estimator.ts';
export { AGES, humanLimits, type Limits } from './human-limits.ts';
export { resolveBody, type ResolveOptions } from './resolve-body.ts';
export type { Lies } from './sizes/nearest-row.ts';
export type { Mark } from './sizes/mark.ts';
export type { PublishedSizes, SizeMeasure, SizeRange, SizeRow } from './sizes/published-sizes.ts';
export { rowBodyMeasures } from './sizes/row-body-measures.ts';
export { rowForAge, rowForChest, type RowFound } from './sizes/row-for-chest.ts';
export { withPublishedSize, type PublishedSize } from './sizes/with-published-size.ts';
export { publishedSizes, sizeRow, sizeTable } from './sizes/size-tables.ts';
export { bodyModelEstimator } from './model/body-model-estimator.ts';
export { bodySize, REFERENCE_LOG_WEIGHT, REFERENCE_STATURE, type BodySize } from './model/body-size.ts';
export {
  CIVILIAN_GIRTHS,
  type BodyModelCoefficients,
  type GirthResiduals,
  type Mapping,
  type MappingUncertainty,
  type PerGirth,
  type SexCoefficients,
  type SurveySource,
} from './model/coefficients.ts';
export { condition, type Conditioned, type Gaussian } from './model/gaussian.ts';
export { loadBodyModel, type BodyModel } from './model/load-body-model.ts';
export { BODY_MODEL_MADE_FROM } from './model/model-notes.ts';
export { nextMeasure, type NextMeasure, type NextMeasureInput, type Sensitivity } from './model/next-measure.ts';
export type { Spread } from './model/posterior.ts';
export { bodyQuestioner, type Question, type QuestionsInput } from './model/questions.ts';
export type { SlipCode } from './model/repairs.ts';
export { bodyFromRecord } from './body-from-record.ts';
export { BODY_MEASURE_RECORD, BODY_RECORD, BODY_SIZE_RECORD, type BodyRecord, type StoredBody } from './body-record.ts';
export { MEASURING_DIFFICULTY, type MeasuringDifficulty } from './model/measuring-difficulty.ts';
export type { BodyQuestionCodes } from './model/question-codes.ts';
