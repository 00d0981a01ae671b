import type { BodyDimension } from './body-dimension.ts';
import type { ProfileValue } from './body-profile.ts';
import { defaultU } from './default-u.ts';
import type { ProfileValues } from './profile-values.ts';
import type { SizeRow } from './sizes/published-sizes.ts';
import { rowValues } from './sizes/row-body-measures.ts';
import { rowSource } from './sizes/size-tables.ts';

/**
 * How far children of one age stand from its row, as a share of the value. Derived from NHANES 2017 to March 2020, by year of age 2
 * to 16: SD of the waist 8 to 21 % of the mean, of the upper arm 8 to 20 %, of the hip 11 to 15 %, of the stature 5 to 6 % (taken
 * for every length); of the chest assumed.
 */
const SHARE_BY_AGE: Readonly<Partial<Record<BodyDimension, number>>> = {
  'chest-girth': 0.1,
  'waist-girth': 0.15,
  'upper-arm-girth': 0.15,
  'hip-girth': 0.13,
};
const LENGTH_SHARE_BY_AGE = 0.055;

/** A row's values as those of a body, mm. A row found by age tells less than one found by chest. */
export function rowProfileValues(row: SizeRow, by: 'chest' | 'age'): ProfileValues {
  const one = (name: BodyDimension, value: number): ProfileValue => {
    const share = by === 'chest' ? 0 : (SHARE_BY_AGE[name] ?? LENGTH_SHARE_BY_AGE);
    const u = Math.max(defaultU(name, 'table').u, share * value);
    return { value, u, how: 'table', from: rowSource(row, name) };
  };
  return Object.fromEntries(rowValues(row).map(([name, value]) => [name, one(name, value)]));
}
