import { describe, expect, it } from 'vitest';
import { defaultU } from './default-u.ts';
import { rowProfileValues } from './row-profile-values.ts';
import { rowValues } from './sizes/row-body-measures.ts';
import { rowSource, sizeRow, sizeTable } from './sizes/size-tables.ts';

const row = sizeRow(sizeTable('craft-yarn-council-child'), '8');
const names = rowValues(row).map(([name]) => name);

describe('the values of a row', () => {
  it('are its own, with where each is from', () => {
    const values = rowProfileValues(row, 'chest');
    expect(Object.keys(values)).toEqual(names);
    for (const [name, value] of rowValues(row))
      expect(values[name]).toEqual({ value, u: defaultU(name, 'table').u, how: 'table', from: rowSource(row, name) });
  });

  /** NHANES: waist and upper arm about 15 % of the mean, hip 13 %, stature 5 to 6 %; the chest assumed. */
  it.each([
    ['chest-girth', 0.1],
    ['waist-girth', 0.15],
    ['upper-arm-girth', 0.15],
    ['hip-girth', 0.13],
    ['underarm-length', 0.055],
    ['across-back', 0.055],
  ] as const)('by age have an uncertainty of no less than their share: %s, %d', (name, share) => {
    const value = row.mm[name]!.mid;
    const { u } = rowProfileValues(row, 'age')[name]!;
    expect(u).toBeCloseTo(Math.max(defaultU(name, 'table').u, share * value), 9);
  });

  it('by age are never surer than by chest', () => {
    const [age, chest] = [rowProfileValues(row, 'age'), rowProfileValues(row, 'chest')];
    for (const name of names) expect(age[name]!.u).toBeGreaterThanOrEqual(chest[name]!.u);
    expect(age['waist-girth']!.u).toBeGreaterThan(chest['waist-girth']!.u);
  });
});
