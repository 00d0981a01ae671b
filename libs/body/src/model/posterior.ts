import type { EstimatorInput } from '../estimator.ts';
import type { BodyModelCoefficients } from './coefficients.ts';
import { errorCovariance } from './error-covariance.ts';
import { explain, regress, type Conditioned } from './gaussian.ts';
import type { KnownLogs } from './known-logs.ts';
import { priorOf, type Prior } from './prior.ts';

export type Sex = 'woman' | 'man';

/**
 * For whom the spread is to be honest.
 * `anyone` (the product): the surveys' spread widened, and the doubt of the mappings.
 * `anyone-as-surveyed`: without that doubt, for comparison with rows that went through the same mappings.
 * `surveyed`: the soldiers themselves.
 */
export type Spread = 'anyone' | 'anyone-as-surveyed' | 'surveyed';

/** What is prepared once for all bodies: of each sex, how people are spread, and how the surveys are. */
export type Priors = Readonly<Record<Sex, { readonly truth: Prior; readonly surveyed: Prior }>>;

export function priorsOf(coefficients: BodyModelCoefficients, spread: Spread): Priors {
  const doubts = spread === 'anyone';
  const of = (sex: Sex) => ({
    truth: priorOf(coefficients, sex, { others: spread !== 'surveyed', doubts }),
    surveyed: priorOf(coefficients, sex, { others: false, doubts }),
  });
  return { woman: of('woman'), man: of('man') };
}

/** The dimensions that were not known, given those that were: moments of their logarithms. Shapes as in `Conditioned`. */
export interface Posterior {
  readonly rest: readonly number[];
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  readonly gain: Float64Array;
  /** How probable each sex is, and the prior means of all dimensions under that mixture. */
  readonly weights: Readonly<Record<Sex, number>>;
  readonly priorMean: Float64Array;
}

/**
 * What the model of the sex said makes of the known values; where none is said, both models, weighted by how well each explains them (even before anything is
 * known), with the moments of the mixture.
 *
 * The estimates are the surveys' own regression (moved by age), for it has the least error where it could be tried; their errors are those that regression has
 * among people spread as `truth` says.
 */
export function posteriorOf(
  priors: Priors,
  { figure, ageYears }: Pick<EstimatorInput, 'figure' | 'ageYears'>,
  known: KnownLogs,
): Posterior {
  const { at, logs, noise } = known;
  const parts = sexesOf(figure).map((sex) => {
    const truth = priors[sex].truth(ageYears);
    const surveyed = { ...priors[sex].surveyed(ageYears), mean: truth.mean };
    const { distance, logDensity } = explain(truth, at, logs, noise);
    const { rest, mean, gain } = regress(surveyed, at, logs, noise);
    const covariance = errorCovariance({ rest, gain }, truth, at, noise);
    return { sex, priorMean: truth.mean, given: { rest, mean, gain, covariance, distance, logDensity } };
  });
  const best = Math.max(...parts.map(({ given }) => given.logDensity));
  const density = parts.map(({ given }) => Math.exp(given.logDensity - best));
  const total = density.reduce((sum, value) => sum + value, 0);
  const weighted = parts.map((part, index) => ({ ...part, weight: density[index]! / total }));
  return mix(weighted, at.length);
}

export const sexesOf = (figure: EstimatorInput['figure']): readonly Sex[] =>
  figure === 'unsaid' ? ['woman', 'man'] : [figure];

interface Part {
  readonly sex: Sex;
  readonly weight: number;
  readonly priorMean: Float64Array;
  readonly given: Conditioned;
}

function mix(parts: readonly Part[], k: number): Posterior {
  const { rest } = parts[0]!.given;
  const m = rest.length;
  const weights = { woman: 0, man: 0 };
  const mean = new Float64Array(m);
  const gain = new Float64Array(m * k);
  const covariance = new Float64Array(m * m);
  const priorMean = new Float64Array(parts[0]!.priorMean.length);
  for (const { sex, weight, priorMean: own, given } of parts) {
    weights[sex] = weight;
    own.forEach((value, index) => (priorMean[index]! += weight * value));
    given.mean.forEach((value, index) => (mean[index]! += weight * value));
    given.gain.forEach((value, index) => (gain[index]! += weight * value));
  }
  for (const { weight, given } of parts) {
    const stretch = weight * contradiction(given.distance, k);
    for (let i = 0; i < m; i++) {
      const off = weight * (given.mean[i]! - mean[i]!);
      for (let j = 0; j <= i; j++) {
        covariance[i * m + j]! += stretch * given.covariance[i * m + j]! + off * (given.mean[j]! - mean[j]!);
        covariance[j * m + i] = covariance[i * m + j]!;
      }
    }
  }
  return { rest, mean, covariance, gain, weights, priorMean };
}

/**
 * Values that contradict one another must not give a narrow answer. Their squared distance should be about k; three standard deviations of it (√(2k)) above,
 * the variances grow in proportion (a Birge ratio: Birge 1932; the threshold assumed).
 */
const contradiction = (distance: number, k: number) =>
  k === 0 ? 1 : Math.max(1, distance / (k + 3 * Math.sqrt(2 * k)));
