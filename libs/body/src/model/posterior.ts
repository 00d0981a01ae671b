import type { EstimatorInput } from '../estimator.ts';
import type { BodyModelCoefficients } from './coefficients.ts';
import { errorCovariance } from './error-covariance.ts';
import { explain, regress } from './gaussian.ts';
import type { KnownLogs } from './known-logs.ts';
import { priorOf, type Prior } from './prior.ts';

type Sex = 'woman' | 'man';

/**
 * For whom the spread is to be honest.
 * `anyone` (the product): the surveys' spread widened, and the uncertainty of the mappings.
 * `anyone-as-surveyed`: without that uncertainty, for comparison with rows that went through the same mappings.
 * `surveyed`: the soldiers themselves.
 */
export type Spread = 'anyone' | 'anyone-as-surveyed' | 'surveyed';

/** What is prepared once for all bodies: of each sex, how people are spread, and how the surveys are. */
type Priors = Readonly<Record<Sex, { readonly truth: Prior; readonly surveyed: Prior }>>;

export function priorsOf(coefficients: BodyModelCoefficients, spread: Spread): Priors {
  const mappingUncertainties = spread === 'anyone';
  const of = (sex: Sex) => ({
    truth: priorOf(coefficients, sex, { others: spread !== 'surveyed', mappingUncertainties }),
    surveyed: priorOf(coefficients, sex, { others: false, mappingUncertainties }),
  });
  return { woman: of('woman'), man: of('man') };
}

/** The dimensions at `rest`, given those that were known: moments of their logarithms. Shapes as in `Conditioned`. */
export interface Posterior {
  readonly rest: readonly number[];
  readonly mean: readonly number[];
  readonly covariance: readonly number[];
  readonly gain: readonly number[];
  /** How probable each sex is, and the prior means of all dimensions under that mixture. */
  readonly weights: Readonly<Record<Sex, number>>;
  readonly priorMean: readonly number[];
  /** How many times the variances were widened because the known values contradict one another; 1 where they do not. */
  readonly contradiction: number;
}

/**
 * What the model of the sex said makes of the dimensions at `rest` by the known values; where none is said, both models, weighted by how well each explains them (even before anything is
 * known), with the moments of the mixture.
 *
 * The estimates are the surveys' own regression (moved by age), for it has the least error where it could be tried; their errors are those that regression has
 * among people spread as `truth` says.
 */
export function posteriorOf(
  priors: Priors,
  { figure, ageYears }: Pick<EstimatorInput, 'figure' | 'ageYears'>,
  known: KnownLogs,
  rest: readonly number[],
): Posterior {
  const [only, other] = sexesOf(figure).map((sex) => posteriorOfSex(sex, priors[sex], ageYears, known, rest));
  return other === undefined ? only! : mixed([only!, other]);
}

export const sexesOf = (figure: EstimatorInput['figure']): readonly Sex[] =>
  figure === 'unsaid' ? ['woman', 'man'] : [figure];

/** What one sex's model makes of the known values, and the logarithm of their density in it. */
interface PosteriorOfSex extends Posterior {
  readonly sex: Sex;
  readonly logDensity: number;
}

function posteriorOfSex(
  sex: Sex,
  prior: Priors[Sex],
  ageYears: number | null,
  { at, logs, noise }: KnownLogs,
  rest: readonly number[],
): PosteriorOfSex {
  const truth = prior.truth(ageYears);
  const { distance, logDensity } = explain(truth, at, logs, noise);
  const { n, covariance: among } = prior.surveyed(ageYears);
  const { mean, gain } = regress({ n, mean: truth.mean, covariance: among }, at, logs, noise, rest);
  const covariance = errorCovariance({ rest, gain }, truth, at, noise);
  const contradiction = contradictionOf(distance, at.length);
  if (contradiction > 1) for (let cell = 0; cell < covariance.length; cell++) covariance[cell]! *= contradiction;
  const weights = { woman: sex === 'woman' ? 1 : 0, man: sex === 'man' ? 1 : 0 };
  return { sex, logDensity, rest, mean, covariance, gain, weights, priorMean: truth.mean, contradiction };
}

/** The moments of a mixture. */
function mixed(parts: readonly PosteriorOfSex[]): Posterior {
  const best = Math.max(...parts.map(({ logDensity }) => logDensity));
  const densities = parts.map(({ logDensity }) => Math.exp(logDensity - best));
  const total = densities.reduce((sum, density) => sum + density, 0);
  const shares = densities.map((density) => density / total);
  const sum = (of: (part: PosteriorOfSex) => readonly number[]): number[] =>
    of(parts[0]!).map((_, at) => parts.reduce((all, part, index) => all + shares[index]! * of(part)[at]!, 0));
  const { rest } = parts[0]!;
  const m = rest.length;
  const mean = sum((part) => part.mean);
  const covariance = sum((part) => part.covariance);
  parts.forEach((part, index) => {
    const off = part.mean.map((value, at) => value - mean[at]!);
    for (let i = 0; i < m; i++)
      for (let j = 0; j < m; j++) covariance[i * m + j]! += shares[index]! * off[i]! * off[j]!;
  });
  const weights = { woman: 0, man: 0 };
  parts.forEach(({ sex }, index) => (weights[sex] = shares[index]!));
  return {
    rest,
    mean,
    covariance,
    gain: sum((part) => part.gain),
    weights,
    priorMean: sum((part) => part.priorMean),
    contradiction: Math.min(...parts.map((part) => part.contradiction)),
  };
}

/**
 * Values that contradict one another must not give a narrow answer. Their squared distance should be about k; three standard deviations of it (√(2k)) above,
 * the variances grow in proportion (a Birge ratio: Birge 1932; the threshold assumed).
 */
const contradictionOf = (distance: number, k: number) =>
  k === 0 ? 1 : Math.max(1, distance / (k + 3 * Math.sqrt(2 * k)));
