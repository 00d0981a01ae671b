import { type Conditioned, type Gaussian, seenSpread } from './gaussian.ts';
import { zeros } from './zeros.ts';

/**
 * The covariance of the errors of a linear estimate (its `gain` over the values at `known`, seen with variances `noise`) where the truth is spread like `truth`:
 * Σ_uu − G·Σ_ku − (G·Σ_ku)ᵀ + G·(Σ_kk + R)·Gᵀ. Positive semidefinite whatever G is, and least where G was made from `truth` itself.
 */
export function errorCovariance(
  { rest, gain }: Pick<Conditioned, 'rest' | 'gain'>,
  truth: Gaussian,
  known: readonly number[],
  noise: ArrayLike<number>,
): number[] {
  const { n, covariance: sigma } = truth;
  const m = rest.length;
  const k = known.length;
  const seen = seenSpread(truth, known, noise);
  const carried = zeros(m * k);
  for (let i = 0; i < m; i++) {
    const own = i * k;
    const across = rest[i]! * n;
    for (let b = 0; b < k; b++) {
      let sum = -2 * sigma[across + known[b]!]!;
      for (let a = 0; a < k; a++) sum += gain[own + a]! * seen[b * k + a]!;
      carried[own + b] = sum;
    }
  }
  const errors = zeros(m * m);
  for (let i = 0; i < m; i++) {
    const own = i * k;
    for (let j = 0; j <= i; j++) {
      const other = j * k;
      let twice = 2 * sigma[rest[i]! * n + rest[j]!]!;
      for (let b = 0; b < k; b++) twice += carried[own + b]! * gain[other + b]! + carried[other + b]! * gain[own + b]!;
      errors[i * m + j] = errors[j * m + i] = twice / 2;
    }
  }
  return errors;
}
