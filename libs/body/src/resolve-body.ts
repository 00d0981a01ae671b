import { estimatedProfile, tableProfile } from './adult-profile.ts';
import { bodyProblems } from './body-problems.ts';
import type { Body } from './body.ts';
import type { BodyDimension } from './body-dimension.ts';
import type { BodyProfile } from './body-profile.ts';
import { childProfile } from './child/child-profile.ts';
import type { Estimator } from './estimator.ts';
import { measuredValues, missingFrom } from './profile-values.ts';

/**
 * `estimate` false: only what was measured. `estimator`: the body model for adults; without one they get the published table by chest.
 * `wanted`: what the estimator is asked for, where not all of a body is needed.
 */
export interface ResolveOptions {
  readonly estimate: boolean;
  readonly estimator?: Estimator;
  readonly wanted?: readonly BodyDimension[];
}

/**
 * A body ready for the arithmetic of fit. What was measured stays as it was measured; the rest is filled in (children and babies: published
 * tables and formulas; adults: the estimator, else the published table) or is `missing` with the reason. Every dimension is in exactly one of
 * `values` and `missing`. mm; weight in g.
 * @throws DomainError, the first of `bodyProblems(body)`, with a JSON Pointer into the body.
 */
export function resolveBody(body: Body, { estimate, estimator, wanted }: ResolveOptions): BodyProfile {
  const [problem] = bodyProblems(body);
  if (problem !== undefined) throw problem;
  const { figure, ageYears } = body;
  const measured = measuredValues(body);
  if (!estimate) {
    const missing = missingFrom(measured, () => ({ code: 'not-measured', params: {} }));
    return { figure, ageYears, values: measured, covariance: null, missing, notes: [] };
  }
  if (figure === 'child' || figure === 'baby') return childProfile(figure, ageYears, measured);
  if (estimator === undefined) return tableProfile(figure, ageYears, measured);
  return estimatedProfile(figure, ageYears, measured, estimator, wanted);
}
