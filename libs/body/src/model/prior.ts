import type { BodyDimension } from '../body-dimension.ts';
import { ageEffect } from './age-effect.ts';
import { beyondCivilians, beyondSoldiers } from './beyond-surveys.ts';
import { CIVILIAN_GIRTHS, type BodyModelCoefficients, type SexCoefficients } from './coefficients.ts';
import type { Gaussian } from './gaussian.ts';
import { FROM_CIVILIANS } from './range.ts';
import { zeros } from './zeros.ts';

/** The joint distribution of the logarithms of all dimensions, and how b = ln(BMI/25) is spread along with them. */
export interface BodyPrior extends Gaussian {
  readonly bmi: {
    readonly mean: number;
    /** Covariance of b with each dimension. */
    readonly covariance: readonly number[];
    /** How far each dimension moves for b. */
    readonly slopes: readonly number[];
  };
}

/**
 * The prior of a sex, before anything of a body is known but its age, of the dimensions at `places` in that order. Girths bend with b = ln(BMI/25); the bend is
 * replaced by its tangent at `b`: p² ≈ p̂² + 2p̂(b − b̂).
 */
export interface Prior {
  /** How many dimensions there are. */
  readonly n: number;
  readonly meanB: number;
  at(ageYears: number | null, b: number, places: readonly number[]): BodyPrior;
}

/** What does not depend on age or size is computed here, once for all bodies. */
export function priorOf(
  { dimensions, inflation, ...sexes }: BodyModelCoefficients,
  sex: 'woman' | 'man',
  mappingUncertainties: boolean,
): Prior {
  const own = sexes[sex];
  const prepared = {
    fixed: fixedCovariance(own, dimensions, inflation, mappingUncertainties),
    fromSoldiers: dimensions.map((name) => !FROM_CIVILIANS.includes(name)),
    girthOf: dimensions.map((name) => (CIVILIAN_GIRTHS as readonly BodyDimension[]).indexOf(name)),
  };
  return {
    n: dimensions.length,
    meanB: own.size.mean[1],
    at: (ageYears, b, places) => linearised(own, prepared, ageYears, b, places),
  };
}

/** What is the same for all bodies. */
interface Prepared {
  readonly fixed: readonly number[];
  readonly fromSoldiers: readonly boolean[];
  /** Which of the civilian girths a dimension is; −1 where it is none. */
  readonly girthOf: readonly number[];
}

/** Own residuals, inflated for people who are not soldiers; the shift between populations; the mappings. */
function fixedCovariance(
  { residuals, shiftSd, mappingUncertainties }: SexCoefficients,
  dimensions: readonly BodyDimension[],
  inflation: number,
  withMappings: boolean,
): number[] {
  const n = dimensions.length;
  const covariance = zeros(n * n);
  for (let row = 0, cell = 0; row < n; row++) {
    for (let column = 0; column <= row; column++, cell++)
      covariance[row * n + column] = covariance[column * n + row] = inflation ** 2 * residuals[cell]!;
    covariance[row * n + row]! += shiftSd[row]! ** 2;
  }
  if (!withMappings) return covariance;
  for (const { logSd } of mappingUncertainties) {
    const moves = dimensions.flatMap((name, index) =>
      logSd[name] === undefined ? [] : [[index, logSd[name]] as const],
    );
    for (const [row, a] of moves) for (const [column, c] of moves) covariance[row * n + column]! += a * c;
  }
  return covariance;
}

function linearised(
  own: SexCoefficients,
  { fixed, fromSoldiers, girthOf }: Prepared,
  ageYears: number | null,
  b: number,
  places: readonly number[],
): BodyPrior {
  const { size, at, stature, bmi, bend, onGirths } = own;
  const [n, m] = [at.length, places.length];
  const p = Math.max(0, b);
  const [meanH, meanB] = size.mean;
  const [hh, hb, bb] = size.covariance;
  const girths = girthCovariance(own, p);
  const age = ageEffect(own.girthResiduals, ageYears);
  const mean = zeros(m);
  const withB = zeros(m);
  const slopes = zeros(m);
  const covariance = zeros(m * m);
  for (let row = 0; row < m; row++) {
    const i = places[row]!;
    const h = stature[i]!;
    const slope = (slopes[row] = bmi[i]! + 2 * p * bend[i]!);
    const withH = h * hh + slope * hb;
    withB[row] = h * hb + slope * bb;
    mean[row] = at[i]! + h * meanH + slope * meanB - bend[i]! * p ** 2;
    const [x, y, z] = [onGirths[0][i]!, onGirths[1][i]!, onGirths[2][i]!];
    const withWaist = x * girths[0]! + y * girths[1]! + z * girths[2]!;
    const withHip = x * girths[3]! + y * girths[4]! + z * girths[5]!;
    const withArm = x * girths[6]! + y * girths[7]! + z * girths[8]!;
    const girth = girthOf[i]!;
    for (let column = 0; column <= row; column++) {
      const j = places[column]!;
      let both = fixed[i * n + j]! + withH * stature[j]! + withB[row]! * slopes[column]!;
      both += withWaist * onGirths[0][j]! + withHip * onGirths[1][j]! + withArm * onGirths[2][j]!;
      if (girth !== -1 && girthOf[j] !== -1) both += age.covariance(girth, girthOf[j]!);
      covariance[row * m + column] = covariance[column * m + row] = both;
    }
    if (girth !== -1) mean[row]! += age.mean[girth]!;
    if (fromSoldiers[i]!) covariance[row * m + row]! += beyondSoldiers(b, bmi[i]!, ageYears);
    else if (girth !== -1) covariance[row * m + row]! += beyondCivilians(ageYears);
  }
  return { n: m, mean, covariance, bmi: { mean: meanB, covariance: withB, slopes } };
}

/** Covariance of the civilian girths' residuals, 3 × 3, row by row. */
function girthCovariance({ girthResiduals: { sd, sdBend, correlations } }: SexCoefficients, p: number): number[] {
  const [waistHip, waistArm, hipArm] = correlations;
  const correlation = [1, waistHip, waistArm, waistHip, 1, hipArm, waistArm, hipArm, 1];
  const own = sd.map((one, g) => Math.hypot(one, sdBend[g]! * p));
  return correlation.map((value, cell) => value * own[Math.floor(cell / 3)]! * own[cell % 3]!);
}
