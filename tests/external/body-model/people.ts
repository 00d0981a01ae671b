import type { BodyDimension, KnownValue } from '#body';
import { civiliansFrom } from '../../../scripts/body-model/civilians.ts';
import type { Columns } from '../../../scripts/body-model/columns.ts';
import type { Sex } from '../../../scripts/body-model/names.ts';
import type { SurveyRows } from '../../../scripts/body-model/survey-rows.ts';
import { tradeMeasures } from '../../../scripts/body-model/trade-measures.ts';
import { waistLevels } from '../../../scripts/body-model/waist-levels.ts';

/** Someone of a survey in the trade's measures, mm (weight: g). */
export interface Person {
  readonly ageYears: number | null;
  readonly mm: Readonly<Partial<Record<BodyDimension, number>>>;
}

export const SEXES: readonly Sex[] = ['woman', 'man'];

const persons = (columns: Columns, ages: readonly number[]): Person[] =>
  columns['stature']!.map((_, row) => ({
    ageYears: ages[row]!,
    mm: Object.fromEntries(Object.entries(columns).map(([name, values]) => [name, values[row]!])),
  }));

/** The median age of the soldiers, years: the file of 1988 gives none. */
const MEDIAN_AGE = 27;

/** The soldiers of 1988: every dimension. */
export function soldiers1988(rows: SurveyRows, sex: Sex): Person[] {
  const measures = tradeMeasures(rows.in1988, 1988, sex);
  return persons(
    measures,
    measures['stature']!.map(() => MEDIAN_AGE),
  );
}

/** The soldiers of 2012, with their ages; their waist at the navel is mapped to the natural waist as the build does it. */
export function soldiers2012(rows: SurveyRows, sex: Sex): Person[] {
  const measures = tradeMeasures(rows.in2012, 2012, sex);
  const { naturalFrom } = waistLevels(tradeMeasures(rows.in1988, 1988, sex));
  const waist = measures['navel-girth']!.map(naturalFrom);
  return persons({ ...measures, 'waist-girth': waist }, rows.in2012['Age']!);
}

/** The civilians of 18 and over, with their ages; the waist mapped likewise. */
export function civilians(rows: SurveyRows, sex: Sex): Person[] {
  const { naturalFrom } = waistLevels(tradeMeasures(rows.in1988, 1988, sex));
  return civiliansFrom(rows.nhanes, naturalFrom).map(({ age, ...mm }) => ({ ageYears: age, mm }));
}

/** The named measures of a person as known values, each with the uncertainty given for it. */
export const knownOf = (
  { mm }: Person,
  names: readonly BodyDimension[],
  u: (name: BodyDimension, value: number) => number = () => 0,
): KnownValue[] => names.map((name) => ({ name, value: mm[name]!, u: u(name, mm[name]!) }));
