import type { BodyDimension } from '#body';

export type Sex = 'woman' | 'man';

/** Measures that only help to join the two surveys; no maker takes them. */
type Helper = 'navel-girth' | 'navel-back-length' | 'flexed-arm-girth';
export type MeasureName = BodyDimension | Helper;
