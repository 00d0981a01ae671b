import { describe, expect, it } from 'vitest';
import type { BodyDimension } from '../body-dimension.ts';
import type { ProfileValues } from '../profile-values.ts';
import { sizeTable } from '../sizes/size-tables.ts';
import { ageByMeasures } from './age-by-measures.ts';

const child = sizeTable('craft-yarn-council-child');
const measured = (of: Partial<Record<BodyDimension, number>>): ProfileValues =>
  Object.fromEntries(
    Object.entries(of).map(([name, value]) => [
      name,
      { value, u: 1, how: 'home', from: { code: 'assumed', params: {} } },
    ]),
  );

describe('the age that measures tell', () => {
  it.each(child.rows.map((row) => [row.label, row] as const))('is that of %s for its own measures', (_, row) => {
    const of = Object.fromEntries(Object.entries(row.mm).map(([name, { mid }]) => [name, mid]));
    expect(ageByMeasures(child, measured(of))).toBe(row.ageYears);
  });

  it.each([
    [{ stature: 1194 }, 6],
    [{ stature: 1250 }, 6],
    [{ stature: 1265 }, 8],
    [{ weight: 9500 }, 1],
    [{ 'head-girth': 478 }, 1.5],
    [{ 'wrist-girth': 108 + 3.2 * 12 }, 12],
    [{ 'hand-girth': 1.2 * (108 + 3.2 * 14) }, 14],
    [{ stature: 2000 }, 16],
    [{ stature: 400 }, 0.25],
    // Nearer to 8 in the first (ln 1320/1194 = 0.10) than it is to 6 in the second (ln 511/503 = 0.016).
    [{ stature: 1320, 'head-girth': 511 }, 8],
  ] as const)('is that of other children where its table has none of them: %j → %d', (of, age) => {
    expect(ageByMeasures(child, measured(of))).toBe(age);
  });

  it('is what the table tells where it has one of the measures', () => {
    const [row] = child.rows;
    const arm = row!.mm['underarm-length']!.mid;
    expect(ageByMeasures(child, measured({ 'underarm-length': arm, stature: 1669 }))).toBe(row!.ageYears);
  });

  it('is none where nothing tells it', () => {
    expect(ageByMeasures(child, {})).toBeNull();
    expect(ageByMeasures(child, measured({ 'forearm-girth': 180 }))).toBeNull();
  });
});
