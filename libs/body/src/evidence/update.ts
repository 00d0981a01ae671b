import { solveLower, solveUpper } from '../model/cholesky.ts';
import { zeros } from '../model/zeros.ts';
import { innovationFactor, innovationsAt, type Innovations } from './innovations.ts';
import { jointPrior, type JointPrior } from './joint-prior.ts';
import { observationModel } from './observation-model.ts';
import type { HiddenNumber, LogGaussian, Observation } from './observation.ts';

/** What the observations make of the body and of the hidden numbers. */
export interface EvidencePosterior extends JointPrior {
  /** The observations beside what the prior expected, linear as at the posterior; empty where there are none. */
  readonly innovations: Innovations;
}

/** Steps of Gauss–Newton at most; bends keep their side after the first few, so that a value at a bend does not swing between two slopes for ever. */
const STEPS = 20;
const STEPS_THAT_CHOOSE_SIDES = 6;

/** A step that moves no logarithm (or hidden number, in mm) by more than this is the last. */
const STILL = 1e-7;

/** Where the steps of an update end. */
interface UpdatedState {
  readonly prior: JointPrior;
  /** The posterior's mean. */
  readonly mean: readonly number[];
  /** The observations beside what the prior expected, linear as at the mean; empty where there are none. */
  readonly innovations: Innovations;
}

/**
 * Updates a prior by observations: Gauss–Newton on the logarithms and the hidden numbers, each step the textbook update by the linearised observations, with the gain
 * P·Jᵀ·S⁻¹ (the iterated extended Kalman filter: Bell & Cathey, IEEE Trans. Automatic Control 38, 1993; from memory). The covariance left is that of the last step.
 */
export const updateByObservations = (
  body: LogGaussian,
  hidden: readonly HiddenNumber[],
  observations: readonly Observation[],
): EvidencePosterior => posteriorOf(updatedState(body, hidden, observations));

/** The same without its covariance. `start` is a state that it is thought to lie near. */
export function updatedState(
  body: LogGaussian,
  hidden: readonly HiddenNumber[],
  observations: readonly Observation[],
  start?: readonly number[],
): UpdatedState {
  const prior = jointPrior(body, hidden);
  if (observations.length === 0)
    return { prior, mean: prior.mean, innovations: { differences: [], covariance: [], across: [] } };
  const model = observationModel(prior.names, observations);
  let state = start ?? prior.mean;
  let sides = state;
  let innovations = innovationsAt(prior, observations, model, state, sides);
  for (let step = 1; step <= STEPS; step++) {
    const next = updatedMean(prior, innovations);
    const moved = next.reduce((most, value, i) => Math.max(most, Math.abs(value - state[i]!)), 0);
    state = next;
    if (step <= STEPS_THAT_CHOOSE_SIDES) sides = state;
    innovations = innovationsAt(prior, observations, model, state, sides);
    if (moved < STILL) break;
  }
  return { prior, mean: state, innovations };
}

export const posteriorOf = ({ prior, mean, innovations }: UpdatedState): EvidencePosterior => ({
  ...prior,
  mean,
  covariance: innovations.differences.length === 0 ? prior.covariance : updatedCovariance(prior, innovations),
  innovations,
});

/** m + P·Jᵀ·S⁻¹·(innovations). */
function updatedMean({ mean }: JointPrior, innovations: Innovations): number[] {
  const { differences, across } = innovations;
  const [k, n] = [differences.length, mean.length];
  const factor = innovationFactor(innovations);
  const pull = differences.slice();
  solveLower(factor, k, pull);
  solveUpper(factor, k, pull);
  const next = mean.slice();
  for (let i = 0; i < k; i++) for (let place = 0; place < n; place++) next[place]! += across[i * n + place]! * pull[i]!;
  return next;
}

/** P − (L⁻¹·J·P)ᵀ·(L⁻¹·J·P). */
function updatedCovariance({ mean, covariance }: JointPrior, innovations: Innovations): number[] {
  const [k, n] = [innovations.differences.length, mean.length];
  const factor = innovationFactor(innovations);
  /** L⁻¹·J·P, its columns one after the other. */
  const half = zeros(n * k);
  for (let place = 0; place < n; place++) {
    for (let i = 0; i < k; i++) half[place * k + i] = innovations.across[i * n + place]!;
    solveLower(factor, k, half, place * k);
  }
  const left = covariance.slice();
  for (let row = 0; row < n; row++) {
    for (let column = 0; column <= row; column++) {
      let value = covariance[row * n + column]!;
      for (let i = 0; i < k; i++) value -= half[row * k + i]! * half[column * k + i]!;
      left[row * n + column] = left[column * n + row] = value;
    }
  }
  return left;
}
