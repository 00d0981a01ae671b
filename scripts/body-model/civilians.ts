import type { AgePart, AgeParts, Estimator } from '#body';
import type { Columns } from './columns.ts';
import { average, quantile } from './moments.ts';
import type { Sex } from './names.ts';
import type { WaistLevels } from './waist-levels.ts';

/** A civilian of 18 or over: mm, g, years; the waist is already the natural waist (waist-levels.ts). */
interface Civilian {
  readonly age: number;
  readonly stature: number;
  readonly weight: number;
  readonly 'waist-girth': number;
  readonly 'hip-girth': number;
}

const BANDS = [
  [18, 30],
  [30, 45],
  [45, 60],
  [60, 70],
  [70, 81],
] as const;

/** What part of the civilians a 90 % interval is made to hold: a little more, for the next sample of them. */
const COVERED = 0.92;

/** The NHANES rows of one sex, 18 and over; a person without one of the measures is left out. */
export function civiliansFrom(nhanes: Columns, naturalWaist: (hipBoneWaistMm: number) => number): Civilian[] {
  const of = (name: string, row: number, scale: number) => nhanes[name]![row]! * scale;
  return nhanes['age_years']!.map((age, row) => ({
    age,
    stature: of('height_cm', row, 10),
    weight: of('weight_kg', row, 1000),
    'waist-girth': naturalWaist(of('waist_cm', row, 10)),
    'hip-girth': of('hip_cm', row, 10),
  })).filter((person) => person.age >= 18 && Object.values(person).every(Number.isFinite));
}

/**
 * What age does to waist and hip beyond stature and weight, among the civilians whom the model answers at all: the median of its log error, and what spread
 * must be added so that its 90 % interval holds that part of the errors. `waistDoubt` is added to the waist's.
 */
export function agePartsOf(
  civilians: readonly Civilian[],
  sex: Sex,
  estimator: Estimator,
  waistDoubt: number,
): AgeParts {
  const part = (girth: 'waist-girth' | 'hip-girth', doubt: number): AgePart => {
    const bands = BANDS.map(([from, to]) => {
      const band = civilians.filter(({ age }) => age >= from && age < to);
      const errors = band.flatMap((person) => errorOf(estimator, sex, person, girth));
      const shift = quantile(
        errors.map(({ error }) => error),
        0.5,
      );
      const needed = quantile(
        errors.map(({ error }) => Math.abs(error - shift)),
        COVERED,
      );
      const extra = Math.max(0, (needed / 1.645) ** 2 - average(errors.map(({ sd }) => sd ** 2)));
      return { shift, extraSd: Math.hypot(Math.sqrt(extra), doubt) };
    });
    return {
      shift: bands.map(({ shift }) => shift),
      extraSd: bands.map(({ extraSd }) => extraSd),
      unsaidSd: Math.sqrt(average(bands.map(({ shift, extraSd }) => shift ** 2 + extraSd ** 2))),
    };
  };
  return {
    years: BANDS.map(([from, to]) => average(civilians.flatMap(({ age }) => (age >= from && age < to ? [age] : [])))),
    'waist-girth': part('waist-girth', waistDoubt),
    'hip-girth': part('hip-girth', 0),
  };
}

function errorOf(estimator: Estimator, sex: Sex, person: Civilian, girth: 'waist-girth' | 'hip-girth') {
  const known = (['stature', 'weight'] as const).map((name) => ({ name, value: person[name], u: 0 }));
  const { estimates } = estimator.estimate({ figure: sex, ageYears: null, known });
  return estimates.flatMap((one) =>
    one.name === girth && 'value' in one ? [{ error: Math.log(person[girth] / one.value), sd: one.u / one.value }] : [],
  );
}

/**
 * The doubt of the waist's level among civilians, as a standard deviation of the logarithm: the truth may lie anywhere between a constant difference and the
 * regression (a rectangular distribution, JCGM 100:2008, 4.3.7).
 */
export function waistLevelDoubt(nhanes: Columns, { ways }: WaistLevels): number {
  const apart = civiliansFrom(nhanes, (mm) => Math.log(ways.difference(mm) / ways.regression(mm)));
  return Math.abs(average(apart.map((person) => person['waist-girth']))) / 2 / Math.sqrt(3);
}
