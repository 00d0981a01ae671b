import { bodyError } from '../body-errors.ts';
import { factorInPlace, solveLower, solveUpper } from './cholesky.ts';
import { zeros } from './zeros.ts';

/** A joint normal distribution over n numbers: the covariance is row-major, symmetric, positive definite. */
export interface Gaussian {
  readonly n: number;
  readonly mean: readonly number[];
  readonly covariance: readonly number[];
}

/** How well a distribution explains some of its numbers. */
interface Explained {
  /** Squared Mahalanobis distance of the known values from their means. */
  readonly distance: number;
  /** Logarithm of the density of the known values, without the constant −k·ln(2π)/2. */
  readonly logDensity: number;
  /** L with L·Lᵀ = Σ_kk + R (k × k), and L⁻¹ times how far the values lie from their means. */
  readonly factor: readonly number[];
  readonly away: readonly number[];
}

/** What some of the numbers say about the rest. */
export interface Conditioned extends Pick<Explained, 'distance' | 'logDensity'> {
  /** Which of the numbers are the rest, ascending; `mean` are theirs, `covariance` (m × m) how far they may lie off. */
  readonly rest: readonly number[];
  readonly mean: readonly number[];
  readonly covariance: readonly number[];
  /** m × k: how far each of the rest moves for each known value. */
  readonly gain: readonly number[];
}

/** Σ_kk + R, row by row: how the numbers at `known` are spread as they are seen, with error variances `noise`. */
function seenSpread({ n, covariance: sigma }: Gaussian, known: readonly number[], noise: ArrayLike<number>): number[] {
  const k = known.length;
  const seen = zeros(k * k);
  for (let row = 0; row < k; row++) {
    const at = known[row]! * n;
    for (let column = 0; column < k; column++) seen[row * k + column] = sigma[at + known[column]!]!;
    seen[row * k + row]! += noise[row]!;
  }
  return seen;
}

/**
 * What the numbers at `known`, of which `values` were seen with error variances `noise`, are in a distribution.
 *
 * @throws DomainError `singular-covariance` where Σ_kk + R is not positive definite.
 */
export function explain(
  prior: Gaussian,
  known: readonly number[],
  values: ArrayLike<number>,
  noise: ArrayLike<number>,
): Explained {
  const k = known.length;
  const l = seenSpread(prior, known, noise);
  const away = zeros(k);
  for (let row = 0; row < k; row++) away[row] = values[row]! - prior.mean[known[row]!]!;
  if (!factorInPlace(l, k)) {
    throw bodyError('singular-covariance', {});
  }
  solveLower(l, k, away);
  let distance = 0;
  let logDeterminant = 0;
  for (let row = 0; row < k; row++) {
    distance += away[row]! * away[row]!;
    logDeterminant += Math.log(l[row * k + row]!);
  }
  return { distance, logDensity: -distance / 2 - logDeterminant, factor: l, away };
}

/**
 * Conditions on the numbers at `known`, of which `values` were seen with error variances `noise`: the textbook formula with Σ_kk + R in place of Σ_kk
 * (e.g. Rasmussen & Williams, Gaussian Processes for Machine Learning, 2006, eq. 2.23 and 2.24). `rest` are the numbers asked for, all others where it is not said.
 *
 * @throws DomainError as `explain` does.
 */
export function condition(
  prior: Gaussian,
  known: readonly number[],
  values: ArrayLike<number>,
  noise: ArrayLike<number>,
  rest: readonly number[] = others(prior.n, known),
): Conditioned {
  const { n, mean: mu, covariance: sigma } = prior;
  const k = known.length;
  const m = rest.length;
  const { factor, away, distance, logDensity } = explain(prior, known, values, noise);
  /** L⁻¹·Σ_ku, row by row of the rest; then, in its place, the gain. */
  const half = zeros(m * k);
  const mean = zeros(m);
  const covariance = zeros(m * m);
  for (let i = 0; i < m; i++) {
    const at = rest[i]! * n;
    const from = i * k;
    for (let row = 0; row < k; row++) half[from + row] = sigma[at + known[row]!]!;
    solveLower(factor, k, half, from);
    let moved = mu[rest[i]!]!;
    for (let row = 0; row < k; row++) moved += half[from + row]! * away[row]!;
    mean[i] = moved;
    for (let j = 0; j <= i; j++) {
      let left = sigma[at + rest[j]!]!;
      for (let row = 0; row < k; row++) left -= half[from + row]! * half[j * k + row]!;
      covariance[i * m + j] = covariance[j * m + i] = left;
    }
  }
  for (let from = 0; from < half.length; from += k) solveUpper(factor, k, half, from);
  return { rest, mean, gain: half, distance, logDensity, covariance };
}

function others(n: number, known: readonly number[]): number[] {
  const rest: number[] = [];
  for (let index = 0; index < n; index++) if (!known.includes(index)) rest.push(index);
  return rest;
}
