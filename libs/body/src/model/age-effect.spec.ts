import { describe, expect, it } from 'vitest';
import { ageEffect } from './age-effect.ts';

/** A = (age − 45)/20. */
const residuals = {
  age: [0.03, 0.01, 0],
  ageSquared: [0, 0.01, -0.02],
  sd: [1, 1, 1],
  sdBend: [0, 0, 0],
  correlations: [0, 0, 0],
} as const;

describe('the effect of age', () => {
  it.each([
    [45, [0, 0, 0]],
    [65, [0.03, 0.02, -0.02]],
    [25, [-0.03, 0, -0.02]],
  ])('at %d years is age·A + ageSquared·A²', (years, expected) => {
    ageEffect(residuals, years).mean.forEach((value, g) => expect(value).toBeCloseTo(expected[g]!, 12));
    expect(ageEffect(residuals, years).covariance(0, 1)).toBe(0);
  });

  it('stays what it is at 17 below, and at 90 above', () => {
    expect(ageEffect(residuals, 12).mean).toEqual(ageEffect(residuals, 17).mean);
    expect(ageEffect(residuals, 110).mean).toEqual(ageEffect(residuals, 90).mean);
  });

  it('is, where no age is said, the mean and the covariance over all adult ages', () => {
    const steps = Array.from({ length: 62_000 }, (_, i) => 18 + (i + 0.5) / 1000);
    const effects = steps.map((years) => ageEffect(residuals, years).mean);
    const average = (of: (effect: readonly number[]) => number) =>
      effects.reduce((sum, effect) => sum + of(effect), 0) / effects.length;
    const { mean, covariance } = ageEffect(residuals, null);
    for (const one of [0, 1, 2]) {
      expect(mean[one]).toBeCloseTo(
        average((effect) => effect[one]!),
        8,
      );
      for (const other of [0, 1, 2]) {
        const expected = average((effect) => (effect[one]! - mean[one]!) * (effect[other]! - mean[other]!));
        expect(covariance(one, other)).toBeCloseTo(expected, 8);
      }
    }
  });
});
