import type { BodyDimension } from './body-dimension.ts';
import type { ProfileCovariance } from './body-profile.ts';
import type { BodyMissing } from './missing-codes.ts';
import type { BodyNote } from './note-codes.ts';
import type { BodySource } from './source-codes.ts';

/** A known value going in: mm (weight: g) and its standard uncertainty. */
export interface KnownValue {
  readonly name: BodyDimension;
  readonly value: number;
  readonly u: number;
}

/** An adult of whom something was measured. */
export interface EstimatorInput {
  readonly figure: 'woman' | 'man' | 'unsaid';
  readonly ageYears: number | null;
  readonly known: readonly KnownValue[];
  /** What is asked for; all that is not known where this is not said. It changes no estimate. */
  readonly wanted?: readonly BodyDimension[];
}

/** One estimated dimension: median, standard uncertainty and 90 % interval, mm (weight: g); or why there is none. */
export type Estimate =
  | {
      readonly name: BodyDimension;
      readonly value: number;
      readonly u: number;
      readonly low: number;
      readonly high: number;
      /** Nobody of this size or age was measured: a wider answer that rests on assumptions. */
      readonly outsideSurveys?: true;
    }
  | { readonly name: BodyDimension; readonly missing: BodyMissing };

/** What an estimator answers: one entry for every dimension that is wanted and was not known, and the covariance of the estimates (with the known ones where they share error). */
export interface Estimates {
  readonly estimates: readonly Estimate[];
  readonly covariance: ProfileCovariance;
  readonly from: BodySource;
  /** What makes them less sure for this body than for others. */
  readonly notes: readonly BodyNote[];
}

/** A policy for what was not measured. The body model is one; passing none leaves adults unestimated. */
export interface Estimator {
  estimate(input: EstimatorInput): Estimates;
}
