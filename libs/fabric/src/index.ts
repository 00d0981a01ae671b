export { asMade } from './as-made.ts';
export { EXPECTED_THICKNESS, EXPECTED_THICKNESS_SOURCE, type ThicknessRange } from './expected-thickness.ts';
export type { FabricErrors } from './fabric-errors.ts';
export type { FabricNote, FabricNoteCodes, FabricSource, FabricSourceCodes } from './fabric-messages.ts';
export { fabricProblems } from './fabric-problems.ts';
export { CRAFTS, THICKNESS_SOURCES, type Craft, type Directions, type Fabric, type FabricInput } from './fabric.ts';
export { FIBRES, type Fibre } from './fibre.ts';
export { STITCHES, type Stitch } from './stitch.ts';
export {
  flatFromInner,
  flatFromMid,
  girths,
  innerFromFlat,
  midFromFlat,
  outerFromInner,
  type Girths,
  type OneGirth,
} from './girth.ts';
export { resolveFabric } from './resolve-fabric.ts';
export { usableOf, usableAcross } from './stretch.ts';
export { SPARE, yarnEnough, type Enough } from './yarn-enough.ts';
export { yarnUse, type YarnUse } from './yarn-use.ts';
export { weightOf } from './weight-of.ts';
export { FIBRE_DENSITY, PACKING, packedDiameterMm, texOf, yarnDiameterMm, type PackedYarn } from './yarn-diameter.ts';
export { categoriesOfWraps, YARN_WEIGHTS, type Band, type OtherPrinting, type YarnWeight } from './yarn-weights.ts';
export { fabricFromRecord } from './fabric-from-record.ts';
export { FABRIC_RECORD, GROWTH_RECORD, STRETCH_RECORD, type FabricRecord, type StoredFabric } from './fabric-record.ts';
