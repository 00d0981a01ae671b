export { BODY_DIMENSIONS, type BodyDimension } from './body-dimension.ts';
export { FIGURES, type Body, type BodyMeasure, type Figure } from './body.ts';
export type { BodyProfile, ProfileCovariance, ProfileValue } from './body-profile.ts';
export { defaultU, type DefaultU } from './default-u.ts';
export type { Estimate, Estimates, Estimator, EstimatorInput, KnownValue } from './estimator.ts';
export { howText } from './how-text.ts';
