export { DEFAULT_THICKNESS_U, defaultGarmentU } from './default-garment-u.ts';
export { EASE_CATEGORIES, type EaseCategory } from './ease-category.ts';
export { easeInTableTerms, roomOf } from './ease.ts';
export { GARMENT_DIMENSIONS, type GarmentDimension } from './garment-dimension.ts';
export type { GarmentErrors, OutsideLimits } from './garment-errors.ts';
export { garmentProblems } from './garment-problems.ts';
export {
  GARMENT_SLIPS,
  garmentQuestions,
  type GarmentQuestion,
  type GarmentQuestionCodes,
  type GarmentSlip,
} from './garment-questions.ts';
export {
  CONSTRUCTIONS,
  LAYER_SLEEVES,
  REGIONS,
  SLEEVES,
  WEARS,
  type Construction,
  type Garment,
  type GarmentMeasure,
  type GarmentProfile,
  type GarmentValue,
  type Layer,
  type Region,
  type SleeveLength,
  type Wears,
} from './garment.ts';
export { NECKLINES, type Neckline } from './neckline.ts';
export { resolveGarment } from './resolve-garment.ts';
export { garmentFromRecord, layerFromRecord } from './garment-from-record.ts';
export {
  GARMENT_MEASURE_RECORD,
  GARMENT_RECORD,
  SLEEVE_FROM,
  WEARS_RECORD,
  type GarmentRecord,
  type StoredGarment,
} from './garment-record.ts';
export { LAYER_RECORD, type LayerRecord } from './layer-record.ts';
