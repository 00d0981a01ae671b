import type { BodyDimension } from '../body-dimension.ts';
import { bodyMassIndex } from './body-size.ts';
import { CIVILIAN_GIRTHS, type BodyModelCoefficients, type SexCoefficients } from './coefficients.ts';
import { OLDEST, YOUNGEST } from './model-notes.ts';

/** Below this share a sex no longer counts for the range of a body whose sex was not said. */
const COUNTS = 0.05;

const SEXES = ['woman', 'man'] as const;

/** What is known of a body: how probable each sex is, and b = ln(BMI/25). */
interface Body {
  readonly weights: Readonly<Record<(typeof SEXES)[number], number>>;
  readonly b: number;
}

/** The ages that were surveyed, years. */
const AGES = { soldiers: [YOUNGEST, OLDEST], civilians: [18, 80] } as const;

/** Measured at civilians of all ages and sizes; all else at soldiers alone. */
export const FROM_CIVILIANS: readonly BodyDimension[] = ['stature', 'weight', ...CIVILIAN_GIRTHS];

/** A measure of the whole body: outside the surveys' range in one of these, it is outside in all. */
export const SIZE: readonly BodyDimension[] = [
  'stature',
  'weight',
  'chest-girth',
  'underbust-girth',
  'waist-girth',
  'hip-girth',
];

const isWithin = (value: number, lowest: number, highest: number): boolean => value >= lowest && value <= highest;

/** The models of the sexes that a body may be of. */
const counted = (coefficients: BodyModelCoefficients, weights: Body['weights']): readonly SexCoefficients[] =>
  SEXES.filter((sex) => weights[sex] >= COUNTS).map((sex) => coefficients[sex]);

/** Whether a value lies outside the surveys' 1st to 99th percentile, mm (weight: g). */
export function isValueOutside(
  coefficients: BodyModelCoefficients,
  { weights }: Pick<Body, 'weights'>,
  name: BodyDimension,
  value: number,
): boolean {
  const index = coefficients.dimensions.indexOf(name);
  return !counted(coefficients, weights).some(({ lowest, highest }) =>
    isWithin(value, lowest[index]!, highest[index]!),
  );
}

/** Whether a body has an age or a body mass index that nobody had at whom the dimension was measured. */
export function isBodyOutside(
  coefficients: BodyModelCoefficients,
  { weights, b }: Body,
  name: BodyDimension,
  ageYears: number | null,
): boolean {
  const people = FROM_CIVILIANS.includes(name) ? 'civilians' : 'soldiers';
  if (ageYears !== null && !isWithin(ageYears, AGES[people][0], AGES[people][1])) return true;
  return !counted(coefficients, weights).some(({ bmiRange }) => isWithin(bodyMassIndex(b), ...bmiRange[people]));
}
