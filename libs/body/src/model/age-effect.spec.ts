import { describe, expect, it } from 'vitest';
import { ageEffect } from './age-effect.ts';

const part = { shift: [0, 0.02, 0.1], extraSd: [0.01, 0.01, 0.03], unsaidSd: 0.05 };
const ages = { years: [20, 40, 60], 'waist-girth': part, 'hip-girth': { ...part, shift: [0, 0, 0] } };

describe('the effect of age', () => {
  it('is read between the ages of the table: halfway from 40 to 60 the shift is (0.02 + 0.1)/2', () => {
    const { shift, variance } = ageEffect(ages, 'waist-girth', 50);
    expect(shift).toBeCloseTo(0.06, 12);
    expect(variance).toBeCloseTo(0.02 ** 2, 12);
  });

  it.each([
    [20, 0],
    [40, 0.02],
    [17, 0],
    [95, 0.1],
  ])('at %d years the waist moves by %d', (age, shift) => {
    expect(ageEffect(ages, 'waist-girth', age).shift).toBe(shift);
  });

  it('is no move and a wider spread where no age is said', () => {
    expect(ageEffect(ages, 'waist-girth', null)).toEqual({ shift: 0, variance: 0.05 ** 2 });
  });
});
