import type { Note } from '#measure';
import type { BodyDimension } from './body-dimension.ts';
import type { ProfileCovariance } from './body-profile.ts';

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

/** One estimated dimension: mean, standard uncertainty and 90 % interval, mm (weight: g); or the reason to measure it instead. */
export type Estimate =
  | {
      readonly name: BodyDimension;
      readonly value: number;
      readonly u: number;
      readonly low: number;
      readonly high: number;
    }
  | { readonly name: BodyDimension; readonly measureIt: string };

/** What an estimator answers: one entry for every dimension that is wanted and was not known, and the covariance of the estimates (with the known ones where they share error). */
export interface Estimates {
  readonly estimates: readonly Estimate[];
  readonly covariance: ProfileCovariance;
  /** "estimated from stature, chest girth and hip girth (body model 1, US Army surveys of 1988 and 2012)" */
  readonly from: string;
  /** What makes them less sure for this body than for others. */
  readonly notes: readonly Note[];
}

/** A policy for what was not measured. The body model is one; passing none leaves adults unestimated. */
export interface Estimator {
  estimate(input: EstimatorInput): Estimates;
}
