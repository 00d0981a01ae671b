import fc from 'fast-check';
import { Matrix, inverse } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { condition } from './gaussian.ts';
import { loadBodyModel } from './load-body-model.ts';
import { priorOf } from './prior.ts';

const { coefficients } = await loadBodyModel();
const all = coefficients.dimensions.map((_, place) => place);
const prior = priorOf(coefficients, 'woman', false).at(40, 0, all);
const sigma = Matrix.from1DArray(prior.n, prior.n, [...prior.covariance]);

/** Some of the dimensions, how far each lies from its mean (logarithms), and its error variance. */
const someKnown = fc
  .uniqueArray(fc.integer({ min: 0, max: prior.n - 1 }), { minLength: 1, maxLength: 20 })
  .chain((known) =>
    fc.record({
      known: fc.constant(known),
      away: fc.array(fc.double({ min: -0.3, max: 0.3, noNaN: true }), {
        minLength: known.length,
        maxLength: known.length,
      }),
      noise: fc.array(fc.double({ min: 1e-5, max: 1e-2, noNaN: true }), {
        minLength: known.length,
        maxLength: known.length,
      }),
    }),
  );

describe('conditioning the body model', () => {
  it('gives the numbers of the textbook formula in ml-matrix, to 1e-9', () => {
    fc.assert(
      fc.property(someKnown, ({ known, away, noise }) => {
        const values = known.map((index, i) => prior.mean[index]! + away[i]!);
        const ours = condition(prior, known, values, noise);

        const seen = inverse(sigma.selection(known, known).add(Matrix.diag([...noise])));
        const across = sigma.selection([...ours.rest], known);
        const gain = across.mmul(seen);
        const moved = gain.mmul(Matrix.columnVector(away)).to1DArray();
        const left = sigma
          .selection([...ours.rest], [...ours.rest])
          .sub(gain.mmul(across.transpose()))
          .to1DArray();
        const near = (a: readonly number[], b: number[]) =>
          a.forEach((value, i) => expect(Math.abs(value - b[i]!)).toBeLessThan(1e-9));
        near(
          ours.mean,
          moved.map((value, i) => value + prior.mean[ours.rest[i]!]!),
        );
        near(ours.covariance, left);
        expect(ours.gain.length).toBe(gain.to1DArray().length);
        gain.to1DArray().forEach((value, i) => expect(ours.gain[i]).toBeCloseTo(value, 6));
        const distance = Matrix.rowVector(away).mmul(seen).mmul(Matrix.columnVector(away)).get(0, 0);
        expect(Math.abs(ours.distance - distance)).toBeLessThan(1e-6 * (1 + distance));
      }),
      { numRuns: 60 },
    );
  });

  it('returns the prior where nothing is known', () => {
    const { rest, mean, covariance, distance, logDensity } = condition(prior, [], [], []);
    expect(rest).toHaveLength(prior.n);
    expect([...mean]).toEqual([...prior.mean]);
    expect([...covariance]).toEqual([...prior.covariance]);
    expect([distance, logDensity]).toEqual([0, -0]);
  });

  it('gives the same numbers where only some are asked for', () => {
    fc.assert(
      fc.property(someKnown, ({ known, away, noise }) => {
        const values = known.map((index, i) => prior.mean[index]! + away[i]!);
        const whole = condition(prior, known, values, noise);
        const some = whole.rest.filter((_, i) => i % 2 === 0);
        const part = condition(prior, known, values, noise, some);
        expect(part.rest).toEqual(some);
        some.forEach((_, i) => {
          expect(part.mean[i]).toBe(whole.mean[2 * i]);
          some.forEach((__, j) =>
            expect(part.covariance[i * some.length + j]).toBe(whole.covariance[2 * i * whole.rest.length + 2 * j]),
          );
        });
      }),
      { numRuns: 30 },
    );
  });

  it('refuses a singular covariance', () => {
    const twins = { n: 2, mean: [0, 0], covariance: [1, 1, 1, 1] };
    expect(() => condition(twins, [0, 1], [0, 0], [0, 0])).toThrow(
      expect.objectContaining({ code: 'singular-covariance' }),
    );
  });
});
