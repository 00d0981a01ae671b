import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS } from '../body-dimension.ts';
import { bodySize } from './body-size.ts';
import { knownLogs } from './known-logs.ts';
import { loadBodyModel } from './load-body-model.ts';
import { priorOf } from './prior.ts';
import { fitSize } from './size-fit.ts';

const { coefficients } = await loadBodyModel();
const prior = priorOf(coefficients, 'woman', true);
const fitOf = (values: Partial<Record<(typeof BODY_DIMENSIONS)[number], number>>, u = 10) =>
  fitSize(
    prior,
    45,
    knownLogs(
      BODY_DIMENSIONS,
      Object.entries(values).map(([name, value]) => ({ name: name as (typeof BODY_DIMENSIONS)[number], value, u })),
    ),
  );

describe('the size of a body', () => {
  it('is that of its stature and weight, where both are known', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1450, max: 1900 }), fc.integer({ min: 35, max: 220 }), (stature, kg) => {
        const { b } = bodySize(stature, kg * 1000);
        expect(fitOf({ stature, weight: kg * 1000 }, 0).b).toBeCloseTo(b, 2);
      }),
    );
  });

  it('is that of the mean body where nothing is known', () => {
    expect(fitOf({}).b).toBe(coefficients.woman.size.mean[1]);
  });

  it('is where the tangent itself puts it, to 0.001, up to a chest of 1650', () => {
    for (const chest of [700, 900, 1100, 1300, 1500, 1650]) {
      const { b } = fitOf({ 'chest-girth': chest });
      const known = knownLogs(BODY_DIMENSIONS, [{ name: 'chest-girth', value: chest, u: 10 }]);
      const again = fitSize({ ...prior, meanB: b }, 45, known);
      expect(Math.abs(again.b - b)).toBeLessThan(0.001);
    }
  });

  it('grows with a chest, and a heavy body contradicts nothing', () => {
    const sizes = [700, 900, 1100, 1300, 1500].map((chest) => fitOf({ 'chest-girth': chest }));
    sizes.slice(1).forEach(({ b }, i) => expect(b).toBeGreaterThan(sizes[i]!.b));
    for (const { distance } of sizes) expect(distance).toBeLessThan(1);
    expect(fitOf({ 'chest-girth': 800, 'hip-girth': 1500 }).distance).toBeGreaterThan(9);
  });
});
