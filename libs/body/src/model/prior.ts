import type { BodyDimension } from '../body-dimension.ts';
import { AGED_GIRTHS, ageEffect } from './age-effect.ts';
import type { BodyModelCoefficients, SexCoefficients } from './coefficients.ts';
import type { Gaussian } from './gaussian.ts';
import { zeros } from './zeros.ts';

/** What is added to the surveys' own spread. */
interface Widening {
  /** People who are not soldiers: the spread inflated, the shift between populations, age at waist and hip. */
  readonly others: boolean;
  /** Whether to add the uncertainty of the mappings from the surveys' measures to the trade's. */
  readonly mappingUncertainties: boolean;
}

/** The joint distribution of the logarithms of all dimensions, before anything of a body is known but its age. */
export type Prior = (ageYears: number | null) => Gaussian;

/** The prior of a sex. All of it but what age adds is worked out here, once for all bodies. */
export function priorOf(
  { dimensions, inflation, ...sexes }: BodyModelCoefficients,
  sex: 'woman' | 'man',
  { others, mappingUncertainties }: Widening,
): Prior {
  const n = dimensions.length;
  const own = sexes[sex];
  const covariance = surveyed(own, n, others ? inflation : null);
  if (others) addShift(covariance, own);
  if (mappingUncertainties) addMappingUncertainty(covariance, own, dimensions);
  const prior = { n, mean: own.logMean, covariance };
  return others ? (ageYears) => aged(prior, own, dimensions, ageYears) : () => prior;
}

/** Within a survey inflated; or, as they were, all people of both surveys together. */
function surveyed({ withinSurvey, betweenSurveys }: SexCoefficients, n: number, inflation: number | null): number[] {
  const covariance = zeros(n * n);
  for (let row = 0, cell = 0; row < n; row++) {
    for (let column = 0; column <= row; column++, cell++) {
      const within = withinSurvey[cell]!;
      const value =
        inflation === null ? within + betweenSurveys[row]! * betweenSurveys[column]! : inflation ** 2 * within;
      covariance[row * n + column] = covariance[column * n + row] = value;
    }
  }
  return covariance;
}

/** Another population's means may lie off. */
function addShift(covariance: number[], { shiftSd }: SexCoefficients): void {
  const n = shiftSd.length;
  shiftSd.forEach((sd, index) => (covariance[index * n + index]! += sd ** 2));
}

function addMappingUncertainty(
  covariance: number[],
  { mappingUncertainties }: SexCoefficients,
  dimensions: readonly BodyDimension[],
): void {
  const n = dimensions.length;
  for (const { logSd } of mappingUncertainties) {
    const moves = dimensions.flatMap((name, index) =>
      logSd[name] === undefined ? [] : [[index, logSd[name]] as const],
    );
    for (const [row, a] of moves) for (const [column, b] of moves) covariance[row * n + column]! += a * b;
  }
}

function aged(
  prior: Gaussian,
  { ages }: SexCoefficients,
  dimensions: readonly BodyDimension[],
  ageYears: number | null,
): Gaussian {
  const { n } = prior;
  const mean = prior.mean.slice();
  const covariance = prior.covariance.slice();
  for (const girth of AGED_GIRTHS) {
    const index = dimensions.indexOf(girth);
    if (index === -1) continue;
    const { shift, variance } = ageEffect(ages, girth, ageYears);
    mean[index]! += shift;
    covariance[index * n + index]! += variance;
  }
  return { n, mean, covariance };
}
