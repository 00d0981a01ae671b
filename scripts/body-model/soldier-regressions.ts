import { bodySize, CIVILIAN_GIRTHS, condition, REFERENCE_LOG_WEIGHT, REFERENCE_STATURE } from '#body';
import type { Columns } from './columns.ts';
import type { Joined } from './join-surveys.ts';
import { average } from './moments.ts';
import { weightedLeastSquares } from './weighted-least-squares.ts';

/** A dimension that only soldiers were measured at: its logarithm is at + stature·h + bmi·b + bend·p² + onGirths·r and a residual. */
export interface SoldierRegression {
  readonly at: number;
  readonly stature: number;
  readonly bmi: number;
  readonly bend: number;
  readonly onGirths: readonly number[];
}

interface SoldierRegressions {
  readonly names: readonly string[];
  readonly regressions: readonly SoldierRegression[];
  /** Covariance of the residuals within a survey, row by row. */
  readonly residuals: readonly number[];
}

const SIZE = ['stature', 'weight'];

/**
 * The soldiers' regressions of all other dimensions on size, and on what size leaves of the civilian girths. Slopes are those of all soldiers together,
 * residuals those within a survey.
 */
export function soldierRegressions({ names, mean, within, between }: Joined): SoldierRegressions {
  const n = names.length;
  const place = (name: string) => names.indexOf(name);
  const zeros = (count: number) => new Array<number>(count).fill(0);
  const pooled = within.map((value, cell) => value + between[Math.floor(cell / n)]! * between[cell % n]!);
  const on = (covariance: readonly number[], known: readonly string[]) =>
    condition({ n, mean: zeros(n), covariance }, known.map(place), zeros(known.length), zeros(known.length));
  const size = on(pooled, SIZE);
  const all = on(pooled, [...SIZE, ...CIVILIAN_GIRTHS]);
  const { covariance: residuals } = on(within, [...SIZE, ...CIVILIAN_GIRTHS]);
  const { h, b } = bodySize(Math.exp(mean[place('stature')]!), Math.exp(mean[place('weight')]!));
  const k = SIZE.length + CIVILIAN_GIRTHS.length;
  return {
    names: all.rest.map((index) => names[index]!),
    residuals,
    regressions: all.rest.map((index, i) => {
      const row = size.rest.indexOf(index);
      const [onStature, onWeight] = [size.gain[2 * row]!, size.gain[2 * row + 1]!];
      const [stature, bmi] = [onStature + 2 * onWeight, onWeight];
      return {
        at: mean[index]! - stature * h - bmi * b,
        stature,
        bmi,
        bend: 0,
        onGirths: CIVILIAN_GIRTHS.map((_, g) => all.gain[i * k + SIZE.length + g]!),
      };
    }),
  };
}

/** A dimension's regression with the bend that both surveys together show; each survey has its own mean. */
export function bentRegression(
  name: string,
  surveys: readonly Columns[],
  straight: SoldierRegression,
): SoldierRegression {
  const people = surveys.flatMap((survey, index) =>
    survey[name]!.map((value, row) => {
      const { h, b } = bodySize(survey['stature']![row]!, survey['weight']![row]!);
      return {
        log: Math.log(value),
        features: [...surveys.map((_, one) => Number(one === index)), h, b, Math.max(0, b) ** 2],
      };
    }),
  );
  const coefficients = weightedLeastSquares(
    people.map(({ features }) => features),
    people.map(({ log }) => log),
  );
  const [stature, bmi, bend] = coefficients.slice(surveys.length) as [number, number, number];
  const left = people.map(({ log, features }) => {
    const [h, b, square] = features.slice(surveys.length) as [number, number, number];
    return log - stature * h - bmi * b - bend * square;
  });
  return { ...straight, at: average(left), stature, bmi, bend };
}

/** Stature and weight themselves, exactly. */
export const SIZE_REGRESSIONS: Readonly<Record<string, SoldierRegression>> = {
  stature: { at: Math.log(REFERENCE_STATURE), stature: 1, bmi: 0, bend: 0, onGirths: [0, 0, 0] },
  weight: { at: REFERENCE_LOG_WEIGHT, stature: 2, bmi: 1, bend: 0, onGirths: [0, 0, 0] },
};
