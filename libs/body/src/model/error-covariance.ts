import type { Conditioned, Gaussian } from './gaussian.ts';

/**
 * The covariance of the errors of a linear estimate (its `gain` over the values at `known`, seen with variances `noise`) where the truth is spread like `truth`:
 * Σ_uu − G·Σ_ku − (G·Σ_ku)ᵀ + G·(Σ_kk + R)·Gᵀ. Positive semidefinite whatever G is, and least where G was made from `truth` itself.
 */
export function errorCovariance(
  { rest, gain }: Pick<Conditioned, 'rest' | 'gain'>,
  truth: Gaussian,
  known: readonly number[],
  noise: ArrayLike<number>,
): Float64Array {
  const { n, covariance: sigma } = truth;
  const m = rest.length;
  const k = known.length;
  const spread = (row: number, column: number) => sigma[row * n + column]!;
  const carried = new Float64Array(m * k);
  for (let i = 0; i < m; i++) {
    for (let b = 0; b < k; b++) {
      let sum = gain[i * k + b]! * noise[b]!;
      for (let a = 0; a < k; a++) sum += gain[i * k + a]! * spread(known[a]!, known[b]!);
      carried[i * k + b] = sum - 2 * spread(rest[i]!, known[b]!);
    }
  }
  const errors = new Float64Array(m * m);
  for (let i = 0; i < m; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = spread(rest[i]!, rest[j]!);
      for (let b = 0; b < k; b++)
        sum += (carried[i * k + b]! * gain[j * k + b]! + carried[j * k + b]! * gain[i * k + b]!) / 2;
      errors[i * m + j] = errors[j * m + i] = sum;
    }
  }
  return errors;
}
