import { factorInPlace, solveLower, solveUpper } from './cholesky.ts';
import type { Gaussian } from './gaussian.ts';
import type { KnownLogs } from './known-logs.ts';
import { zeros } from './zeros.ts';

/** A step of one value's logarithm. */
interface Move {
  readonly index: number;
  readonly by: number;
}

/** How well a set of values agrees with the model and with itself. */
export interface Plausibility {
  /** Squared Mahalanobis distance of all values. */
  readonly distance: number;
  /** Each value's distance from what the others lead to expect, in standard deviations. */
  readonly z: readonly number[];
  /** What becomes of it when the logarithms at these places move by this much. */
  after(moves: readonly Move[]): { readonly fall: number; readonly z: number };
}

/** From the inverse P of Σ_kk + R: z is (P·d)/√diag P, a move m changes the squared distance by 2mᵀ·P·d + mᵀ·P·m. `after.z` is the largest of the moved values'. */
export function plausibilityOf({ n, mean, covariance }: Gaussian, { at, logs, noise }: KnownLogs): Plausibility {
  const k = at.length;
  const l = zeros(k * k);
  at.forEach((row, i) =>
    at.forEach((column, j) => (l[i * k + j] = covariance[row * n + column]! + (i === j ? noise[i]! : 0))),
  );
  factorInPlace(l, k);
  const inverse = zeros(k * k);
  for (let i = 0; i < k; i++) {
    inverse[i * k + i] = 1;
    solveLower(l, k, inverse, i * k);
    solveUpper(l, k, inverse, i * k);
  }
  const away = logs.map((log, i) => log - mean[at[i]!]!);
  const pull = away.map((_, i) => away.reduce((sum, value, j) => sum + inverse[i * k + j]! * value, 0));
  return {
    distance: away.reduce((sum, value, i) => sum + value * pull[i]!, 0),
    z: pull.map((value, i) => value / Math.sqrt(inverse[i * k + i]!)),
    after: (moves) => {
      const moved = (at: number) => moves.reduce((sum, { index, by }) => sum + by * inverse[at * k + index]!, 0);
      return {
        fall: -moves.reduce((sum, { index, by }) => sum + by * (2 * pull[index]! + moved(index)), 0),
        z: Math.max(
          ...moves.map(({ index }) => Math.abs(pull[index]! + moved(index)) / Math.sqrt(inverse[index * k + index]!)),
        ),
      };
    },
  };
}
