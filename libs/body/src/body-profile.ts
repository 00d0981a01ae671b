import type { How } from '#measure';
import type { BodyDimension } from './body-dimension.ts';
import type { Figure } from './body.ts';
import type { BodyMissing } from './missing-codes.ts';
import type { BodyNote } from './note-codes.ts';
import type { BodySource } from './source-codes.ts';

/** A value ready for the arithmetic of fit: mm (weight: g), its standard uncertainty, how it was come by, and where it is from. */
export interface ProfileValue {
  readonly value: number;
  readonly u: number;
  readonly how: How;
  readonly from: BodySource;
  /** An estimate of a body of a size or an age that no survey and no table has: wider, and resting on assumptions. */
  readonly outsideSurveys?: true;
}

/** Covariances between values that are not independent (estimates), mm²; symmetric, in the order of `names`. Its diagonal is u². */
export interface ProfileCovariance {
  readonly names: readonly BodyDimension[];
  readonly matrix: readonly (readonly number[])[];
}

/** Measured, estimated and table values side by side; a dimension that is in `values` is usable, one in `missing` says why it is not. */
export interface BodyProfile {
  readonly figure: Figure;
  readonly ageYears: number | null;
  readonly values: Readonly<Partial<Record<BodyDimension, ProfileValue>>>;
  readonly covariance: ProfileCovariance | null;
  readonly missing: Readonly<Partial<Record<BodyDimension, BodyMissing>>>;
  readonly notes: readonly BodyNote[];
}
