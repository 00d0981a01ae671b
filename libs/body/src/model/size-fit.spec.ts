import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS } from '../body-dimension.ts';
import { bodySize } from './body-size.ts';
import { knownLogs } from './known-logs.ts';
import { loadBodyModel } from './load-body-model.ts';
import { priorOf } from './prior.ts';
import { condition, explain } from './gaussian.ts';
import { fitSize, FREE, lineariseAround } from './size-fit.ts';

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

  /** b free is the textbook's prior with FREE² more variance along the slopes. */
  it('leaves b free: how well the values agree is read in a prior with so much more spread along it', () => {
    const typed = knownLogs(BODY_DIMENSIONS, [
      { name: 'chest-girth', value: 1010, u: 12 },
      { name: 'hip-girth', value: 1090, u: 12 },
      { name: 'stature', value: 1610, u: 8 },
    ]);
    const { b, distance, logDensity } = fitSize(prior, 45, typed);
    const { bmi, ...around } = prior.at(45, b, typed.at);
    const [k, places] = [typed.at.length, typed.at.map((_, place) => place)];
    const wider = around.covariance.map(
      (cell, i) => cell + FREE ** 2 * bmi.slopes[Math.floor(i / k)]! * bmi.slopes[i % k]!,
    );
    const free = explain({ ...around, covariance: wider }, places, typed.logs, typed.noise);
    expect(distance).toBeCloseTo(free.distance, 4);
    expect(logDensity).toBeCloseTo(free.logDensity, 4);
    // b as one more number of the joint distribution, given the rest.
    const withB = Array.from({ length: (k + 1) ** 2 }, (_, i) => {
      const [row, column] = [Math.floor(i / (k + 1)), i % (k + 1)];
      if (row < k && column < k) return around.covariance[row * k + column]!;
      return row === column ? coefficients.woman.size.covariance[2] : bmi.covariance[Math.min(row, column)]!;
    });
    const joint = { n: k + 1, mean: [...around.mean, bmi.mean], covariance: withB };
    expect(b).toBeCloseTo(condition(joint, places, typed.logs, typed.noise).mean[0]!, 4);
  });

  it('is where the bend of all dimensions is linearised', () => {
    const typed = knownLogs(BODY_DIMENSIONS, [{ name: 'chest-girth', value: 1300, u: 10 }]);
    const all = BODY_DIMENSIONS.map((_, place) => place);
    expect(lineariseAround(prior, 45, typed)).toEqual(prior.at(45, fitSize(prior, 45, typed).b, all));
  });
});
