import { solveLower, solveUpper } from './cholesky.ts';
import { fixedPoint } from './fixed-point.ts';
import { explain } from './gaussian.ts';
import type { KnownLogs } from './known-logs.ts';
import type { BodyPrior, Prior } from './prior.ts';

/** What the known values say of b = ln(BMI/25), and how well they agree where b may be anything: how heavy a body is contradicts nothing, and tells no sex. */
interface SizeFit {
  /** The mean of b given the known values. */
  readonly b: number;
  /** Squared Mahalanobis distance of the known values, b being free: of one degree of freedom less than there are values. */
  readonly distance: number;
  /** Logarithm of their density, b being free, but for a constant. */
  readonly logDensity: number;
}

/** A b that is free has this standard deviation more than people have (a weight 2.7-fold is within one of it). */
export const FREE = 1;

/** The size of a body by the known values, the prior's bend linearised where they place b. */
export function fitSize(prior: Prior, ageYears: number | null, known: KnownLogs): SizeFit {
  const places = known.at.map((_, j) => j);
  return fixedPoint(prior.meanB, (b) => sizeFitOf(prior.at(ageYears, b, known.at), { ...known, at: places }));
}

function sizeFitOf({ bmi, ...prior }: BodyPrior, { at, logs, noise }: KnownLogs): SizeFit {
  const k = at.length;
  if (k === 0) return { b: bmi.mean, distance: 0, logDensity: 0 };
  const { factor, away, distance, logDensity } = explain(prior, at, logs, noise);
  const slopes = at.map((place) => bmi.slopes[place]!);
  solveLower(factor, k, slopes);
  const information = 1 + FREE ** 2 * dot(slopes, slopes);
  const explained = (FREE * dot(slopes, away)) ** 2 / information;
  const pull = away.slice();
  solveUpper(factor, k, pull);
  return {
    b: at.reduce((sum, place, j) => sum + bmi.covariance[place]! * pull[j]!, bmi.mean),
    distance: distance - explained,
    logDensity: logDensity + explained / 2 - Math.log(information) / 2,
  };
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, value, i) => sum + value * b[i]!, 0);

/** The prior of all dimensions with its bend replaced by the tangent where the known values place b. */
export const lineariseAround = (prior: Prior, ageYears: number | null, known: KnownLogs): BodyPrior =>
  prior.at(
    ageYears,
    fitSize(prior, ageYears, known).b,
    Array.from({ length: prior.n }, (_, place) => place),
  );
