import { bodySize } from '#body';
import type { Columns } from './columns.ts';
import { average } from './moments.ts';
import type { WaistLevels } from './waist-levels.ts';

/**
 * The civilians' upper arm is taken at its middle; the trade takes its fullest place, which the soldiers' mapping puts half of 3 % above that (mappings.ts).
 */
const FULLEST_OF_MIDDLE = 1.015;

/** A civilian of 18 or over: mm, g, years; waist and upper arm are already the trade's (waist-levels.ts, and above). */
export interface Civilian {
  readonly age: number;
  readonly stature: number;
  readonly weight: number;
  readonly 'waist-girth': number;
  readonly 'hip-girth': number;
  readonly 'upper-arm-girth': number;
}

/** The NHANES rows of one sex, 18 and over; a person without one of the measures is left out. */
export function civiliansFrom(nhanes: Columns, naturalWaist: (hipBoneWaistMm: number) => number): Civilian[] {
  const of = (name: string, row: number, scale: number) => nhanes[name]![row]! * scale;
  return nhanes['age_years']!.map((age, row) => ({
    age,
    stature: of('height_cm', row, 10),
    weight: of('weight_kg', row, 1000),
    'waist-girth': naturalWaist(of('waist_cm', row, 10)),
    'hip-girth': of('hip_cm', row, 10),
    'upper-arm-girth': of('upper_arm_girth_cm', row, 10 * FULLEST_OF_MIDDLE),
  })).filter((person) => person.age >= 18 && Object.values(person).every(Number.isFinite));
}

/** Mean and covariance of h and b. */
export function sizeMoments(civilians: readonly Civilian[]) {
  const sizes = civilians.map(({ stature, weight }) => bodySize(stature, weight));
  const mean = [average(sizes.map(({ h }) => h)), average(sizes.map(({ b }) => b))] as const;
  const product = (one: 'h' | 'b', other: 'h' | 'b') =>
    average(sizes.map((size) => (size[one] - mean[one === 'h' ? 0 : 1]) * (size[other] - mean[other === 'h' ? 0 : 1])));
  return { mean, covariance: [product('h', 'h'), product('h', 'b'), product('b', 'b')] as const };
}

/**
 * The doubt of the waist's level among civilians, as a standard deviation of the logarithm: the truth may lie anywhere between a constant difference and the
 * regression (a rectangular distribution, JCGM 100:2008, 4.3.7).
 */
export function waistLevelDoubt(nhanes: Columns, { ways }: WaistLevels): number {
  const apart = civiliansFrom(nhanes, (mm) => Math.log(ways.difference(mm) / ways.regression(mm)));
  return Math.abs(average(apart.map((person) => person['waist-girth']))) / 2 / Math.sqrt(3);
}
