import { solveLower } from '../model/cholesky.ts';
import { innovationFactor, innovationsAt } from './innovations.ts';
import { jointPrior } from './joint-prior.ts';
import { observationModel } from './observation-model.ts';
import type { HiddenNumber, LogGaussian, Observation } from './observation.ts';

/** An observation beside what was expected of it: observed − expected, and the standard uncertainty of that difference, mm. */
export interface Comparison {
  readonly source: string;
  readonly id: string;
  readonly expected: number;
  readonly difference: number;
  readonly u: number;
}

/** Each observation beside what a body that is known without any of them leads to expect; u joins the body's, the hidden numbers', τ and the reading's. */
export function compareWith(
  body: LogGaussian,
  hidden: readonly HiddenNumber[],
  observations: readonly Observation[],
): { readonly comparisons: readonly Comparison[]; readonly logDensity: number } {
  const prior = jointPrior(body, hidden);
  const model = observationModel(prior.names, observations);
  const innovations = innovationsAt(prior, observations, model, prior.mean, prior.mean);
  const { differences, covariance } = innovations;
  const k = observations.length;
  const comparisons = observations.map(({ source, id, observed }, i) => ({
    source,
    id,
    expected: observed - differences[i]!,
    difference: differences[i]!,
    u: Math.sqrt(covariance[i * (k + 1)]!),
  }));
  const factor = innovationFactor(innovations);
  const whitened = differences.slice();
  solveLower(factor, k, whitened);
  const logDensity = whitened.reduce((sum, value, i) => sum - value ** 2 / 2 - Math.log(factor[i * (k + 1)]!), 0);
  return { comparisons, logDensity };
}
