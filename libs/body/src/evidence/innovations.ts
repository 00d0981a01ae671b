import { bodyError } from '../body-errors.ts';
import { factorInPlace } from '../model/cholesky.ts';
import { zeros } from '../model/zeros.ts';
import type { JointPrior } from './joint-prior.ts';
import type { ObservationModel } from './observation-model.ts';
import type { Observation } from './observation.ts';

/** The observations beside what the prior expects of them, where they are taken to be linear as at some state. k observations, n numbers of the state. */
export interface Innovations {
  /** observed − expected under the prior: y − h(x) + J·(x − m). */
  readonly differences: readonly number[];
  /** S = J·P·Jᵀ + R, k × k. */
  readonly covariance: readonly number[];
  /** J·P: the covariance of each observation with each number of the state, k × n. */
  readonly across: readonly number[];
}

/** No tape reads finer, mm. */
const FINEST = 0.5;

/** `state` is where the observations are linearised, `sides` where their bends are. */
export function innovationsAt(
  { mean, covariance }: JointPrior,
  observations: readonly Observation[],
  model: ObservationModel,
  state: readonly number[],
  sides: readonly number[],
): Innovations {
  const [k, n] = [observations.length, mean.length];
  const seen = model(state, sides);
  const across = zeros(k * n);
  const differences = seen.map(({ expected, places, derivatives }, i) => {
    let difference = observations[i]!.observed - expected;
    places.forEach((place, t) => {
      difference += derivatives[t]! * (state[place]! - mean[place]!);
      for (let column = 0; column < n; column++)
        across[i * n + column]! += derivatives[t]! * covariance[place * n + column]!;
    });
    return difference;
  });
  const s = zeros(k * k);
  seen.forEach(({ places, derivatives }, j) => {
    for (let i = 0; i < k; i++)
      for (let t = 0; t < places.length; t++) s[i * k + j]! += across[i * n + places[t]!]! * derivatives[t]!;
    const { tau, u } = observations[j]!;
    s[j * k + j]! += Math.max(tau ** 2 + u ** 2, FINEST ** 2);
  });
  return { differences, covariance: s, across };
}

/** L with L·Lᵀ = S. @throws DomainError `singular-covariance` where S is not positive definite. */
export function innovationFactor({ differences, covariance }: Innovations): number[] {
  const factor = covariance.slice();
  if (!factorInPlace(factor, differences.length)) throw bodyError('singular-covariance', {});
  return factor;
}
