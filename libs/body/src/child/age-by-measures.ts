import type { BodyDimension } from '../body-dimension.ts';
import type { ProfileValues } from '../profile-values.ts';
import type { PublishedSizes } from '../sizes/published-sizes.ts';

/** Ages in years, and what children of them measure, mm (weight: g), both sexes. */
const AGES = [0.25, 0.5, 1, 1.5, 2, 4, 6, 8, 10, 12, 14, 16] as const;

/**
 * Stature and weight: NHANES 2017 to March 2020, medians, from 2 years; growth references (from memory) before. Head: growth references (from memory). Wrist: as
 * child-formulas.ts has it. Hand: 1.2 wrists.
 */
const BY_AGE: Readonly<Partial<Record<BodyDimension, readonly number[]>>> = {
  stature: [610, 670, 750, 815, 904, 1060, 1194, 1320, 1433, 1553, 1640, 1669],
  weight: [6200, 7700, 9500, 10_800, 13_500, 17_600, 23_700, 30_500, 40_900, 50_500, 63_000, 64_900],
  'wrist-girth': AGES.map((age) => 108 + 3.2 * age),
  'hand-girth': AGES.map((age) => 1.2 * (108 + 3.2 * age)),
  'head-girth': [400, 431, 463, 478, 486, 503, 511, 520, 528, 537, 547, 555],
};

/**
 * The age of a size of the table that the measures come nearest to (least squares of the logarithms); where the table has none of them, the age that others of them
 * are of. Null where neither tells anything.
 */
export function ageByMeasures(table: PublishedSizes, measured: ProfileValues): number | null {
  const ofSizes = table.rows.flatMap(({ ageYears, mm }) =>
    ageYears === null ? [] : [{ ageYears, mm: (name: BodyDimension) => mm[name]?.mid }],
  );
  const ofAges = AGES.map((ageYears, i) => ({ ageYears, mm: (name: BodyDimension) => BY_AGE[name]?.[i] }));
  return nearest(ofSizes, measured) ?? nearest(ofAges, measured);
}

interface Aged {
  readonly ageYears: number;
  readonly mm: (name: BodyDimension) => number | undefined;
}

function nearest(list: readonly Aged[], measured: ProfileValues): number | null {
  const names = (Object.keys(measured) as BodyDimension[]).filter((name) =>
    list.some(({ mm }) => mm(name) !== undefined),
  );
  if (names.length === 0) return null;
  const away = ({ mm }: Aged) =>
    names.reduce((sum, name) => sum + Math.log(measured[name]!.value / (mm(name) ?? measured[name]!.value)) ** 2, 0);
  return list.reduce((best, one) => (away(one) < away(best) ? one : best)).ageYears;
}
