import { describe, expect, it } from 'vitest';
import { loadBodyModel } from './load-body-model.ts';
import { isBodyOutside, isValueOutside } from './range.ts';

const { coefficients } = await loadBodyModel();
const woman = { woman: 1, man: 0 };
const man = { woman: 0, man: 1 };
const at = coefficients.dimensions.indexOf('wrist-girth');
const [lowest, highest] = [coefficients.woman.lowest[at]!, coefficients.woman.highest[at]!];

describe('what lies outside the surveys', () => {
  const isOutside = (value: number, weights = woman) => isValueOutside(coefficients, { weights }, 'wrist-girth', value);

  it('is a value below the 1st percentile or above the 99th', () => {
    expect([lowest - 0.01, lowest, highest, highest + 0.01].map((value) => isOutside(value))).toEqual([
      true,
      false,
      false,
      true,
    ]);
  });

  it('is of no sex that the body may be of; one that is hardly possible does not count', () => {
    const largest = coefficients.man.highest[at]!;
    expect(largest).toBeGreaterThan(highest);
    expect(isOutside(largest, man)).toBe(false);
    expect(isOutside(largest, { woman: 0.95, man: 0.05 })).toBe(false);
    expect(isOutside(largest, { woman: 0.951, man: 0.049 })).toBe(true);
  });

  it.each([
    ['neck-base-girth', 16.9, true],
    ['neck-base-girth', 17, false],
    ['neck-base-girth', 58, false],
    ['neck-base-girth', 58.1, true],
    ['waist-girth', 17.9, true],
    ['waist-girth', 18, false],
    ['waist-girth', 80, false],
    ['waist-girth', 80.1, true],
    ['waist-girth', null, false],
  ] as const)('is an age at which nobody was measured: %s at %s years: %s', (name, age, expected) => {
    expect(isBodyOutside(coefficients, { weights: woman, b: 0 }, name, age)).toBe(expected);
  });

  it.each(['soldiers', 'civilians'] as const)('is a body mass index that none of the %s had', (people) => {
    const name = people === 'soldiers' ? 'hand-girth' : 'hip-girth';
    const [thin, heavy] = coefficients.man.bmiRange[people];
    const outside = [thin - 0.01, thin + 0.01, heavy - 0.01, heavy + 0.01].map((bmi) =>
      isBodyOutside(coefficients, { weights: man, b: Math.log(bmi / 25) }, name, 40),
    );
    expect(outside).toEqual([true, false, false, true]);
  });
});
