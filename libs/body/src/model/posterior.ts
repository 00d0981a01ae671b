import type { EstimatorInput } from '../estimator.ts';
import type { BodyModelCoefficients } from './coefficients.ts';
import { condition } from './gaussian.ts';
import type { KnownLogs } from './known-logs.ts';
import { mixtureMoments, sharesOf, weightedSum } from './mixture.ts';
import { fitSize } from './size-fit.ts';
import { priorOf, type Prior } from './prior.ts';

export type Sex = 'woman' | 'man';

/**
 * For whom the spread is to be honest.
 * `anyone` (the product): the surveys' spread widened, and the uncertainty of the mappings.
 * `anyone-as-surveyed`: without that uncertainty, for comparison with rows that went through the same mappings.
 */
export type Spread = 'anyone' | 'anyone-as-surveyed';

type Priors = Readonly<Record<Sex, Prior>>;

/** What is prepared once for all bodies. */
export function priorsOf(coefficients: BodyModelCoefficients, spread: Spread): Priors {
  const of = (sex: Sex) => priorOf(coefficients, sex, spread === 'anyone');
  return { woman: of('woman'), man: of('man') };
}

/** The dimensions at `rest`, given those that were known: moments of their logarithms. Shapes as in `Conditioned`. */
export interface Posterior {
  readonly rest: readonly number[];
  readonly mean: readonly number[];
  readonly covariance: readonly number[];
  readonly gain: readonly number[];
  /** How probable each sex is. */
  readonly weights: Readonly<Record<Sex, number>>;
  /** The median of the body mass index, as ln(BMI/25). */
  readonly b: number;
  /** Squared Mahalanobis distance of the known values, that of the sex they suit better. */
  readonly distance: number;
  /** How many times the variances were widened because the known values contradict one another; 1 where they do not. */
  readonly contradiction: number;
}

/**
 * What the model of the sex said makes of the dimensions at `rest` by the known values; where none is said, both models, weighted by how well each explains them (even before anything is
 * known), with the moments of the mixture.
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
  prior: Prior,
  ageYears: number | null,
  known: KnownLogs,
  rest: readonly number[],
): PosteriorOfSex {
  const { at, logs, noise } = known;
  const { b, distance, logDensity } = fitSize(prior, ageYears, known);
  const around = prior.at(ageYears, b, [...at, ...rest]);
  const k = at.length;
  const places = Array.from(around.mean, (_, place) => place);
  const given = condition(around, places.slice(0, k), logs, noise, places.slice(k));
  const contradiction = contradictionOf(distance, k - 1);
  const covariance = contradiction === 1 ? given.covariance : given.covariance.map((cell) => cell * contradiction);
  const weights = { woman: sex === 'woman' ? 1 : 0, man: sex === 'man' ? 1 : 0 };
  const { mean, gain } = given;
  return { sex, logDensity, rest, mean, covariance, gain, weights, b, distance: given.distance, contradiction };
}

function mixed(parts: readonly PosteriorOfSex[]): Posterior {
  const shares = sharesOf(parts);
  const weights = { woman: 0, man: 0 };
  parts.forEach(({ sex }, index) => (weights[sex] = shares[index]!));
  return {
    ...mixtureMoments(shares, parts),
    rest: parts[0]!.rest,
    gain: weightedSum(
      shares,
      parts.map(({ gain }) => gain),
    ),
    weights,
    b: parts.reduce((sum, { b }, index) => sum + shares[index]! * b, 0),
    distance: Math.min(...parts.map(({ distance }) => distance)),
    contradiction: Math.min(...parts.map(({ contradiction }) => contradiction)),
  };
}

/**
 * Values that contradict one another must not give a narrow answer. Their squared distance should be about its degrees of freedom n; three standard deviations of
 * it (√(2n)) above, the variances grow in proportion (a Birge ratio: Birge 1932; the threshold assumed).
 */
export const contradictionOf = (distance: number, n: number) => (n <= 0 ? 1 : Math.max(1, distance / farOff(n)));

/** A squared distance that values seldom have that agree. */
export const farOff = (n: number): number => n + 3 * Math.sqrt(2 * n);
