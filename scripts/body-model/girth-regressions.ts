import { bodySize, CIVILIAN_GIRTHS, type GirthResiduals, type PerGirth } from '#body';
import type { Civilian } from './civilians.ts';
import { average } from './moments.ts';
import { dot, weightedLeastSquares } from './weighted-least-squares.ts';

/** A civilian girth: its logarithm is at + stature·h + bmi·b + bend·p² and a residual. */
interface GirthRegression {
  readonly at: number;
  readonly stature: number;
  readonly bmi: number;
  readonly bend: number;
}

interface GirthRegressions {
  readonly girths: readonly [waist: GirthRegression, hip: GirthRegression, upperArm: GirthRegression];
  readonly residuals: GirthResiduals;
}

/** The spread grows with p, and who is spread widely weighs less: so many rounds of both until nothing changes. */
const ROUNDS = 12;

/** The civilian girths on stature, weight and age, with a spread that grows with p = max(0, b). */
export function girthRegressions(civilians: readonly Civilian[]): GirthRegressions {
  const features = civilians.map(({ age, stature, weight }) => {
    const { h, b } = bodySize(stature, weight);
    const a = (age - 45) / 20;
    return [1, h, b, Math.max(0, b) ** 2, a, a ** 2];
  });
  const fits = CIVILIAN_GIRTHS.map((girth) =>
    fitOf(
      features,
      civilians.map((person) => Math.log(person[girth])),
    ),
  );
  const per = (of: (fit: (typeof fits)[number]) => number) => fits.map(of) as unknown as PerGirth;
  const correlation = (one: number, other: number) =>
    average(civilians.map((_, row) => fits[one]!.standardised[row]! * fits[other]!.standardised[row]!));
  return {
    girths: fits.map(({ coefficients: [at, stature, bmi, bend] }) => ({
      at: at!,
      stature: stature!,
      bmi: bmi!,
      bend: bend!,
    })) as unknown as GirthRegressions['girths'],
    residuals: {
      age: per(({ coefficients }) => coefficients[4]!),
      ageSquared: per(({ coefficients }) => coefficients[5]!),
      sd: per(({ sd }) => sd),
      sdBend: per(({ sdBend }) => sdBend),
      correlations: [correlation(0, 1), correlation(0, 2), correlation(1, 2)],
    },
  };
}

/** Regression and variance by turns: maximum likelihood of a normal residual of variance sd² + (sdBend·p)². */
function fitOf(features: readonly (readonly number[])[], logs: readonly number[]) {
  const grown = features.map((row) => [1, row[3]!]);
  let variances = logs.map(() => 1);
  let [coefficients, squares, parts]: number[][] = [[], [], []];
  for (let round = 0; round < ROUNDS; round++) {
    const weights = variances.map((variance) => 1 / variance);
    coefficients = weightedLeastSquares(features, logs, weights);
    squares = features.map((row, i) => (logs[i]! - dot(row, coefficients!)) ** 2);
    parts = weightedLeastSquares(
      grown,
      squares,
      weights.map((weight) => weight ** 2),
    );
    if (parts[1]! < 0) parts = [average(squares), 0];
    variances = grown.map((row) => dot(row, parts!));
  }
  return {
    coefficients: coefficients!,
    sd: Math.sqrt(parts![0]!),
    sdBend: Math.sqrt(parts![1]!),
    standardised: features.map((row, i) => (logs[i]! - dot(row, coefficients!)) / Math.sqrt(variances[i]!)),
  };
}
