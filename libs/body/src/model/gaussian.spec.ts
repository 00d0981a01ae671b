import fc from 'fast-check';
import { Matrix, inverse } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { errorCovariance } from './error-covariance.ts';
import { condition } from './gaussian.ts';
import { loadBodyModel } from './load-body-model.ts';
import { priorOf } from './prior.ts';

const { coefficients } = await loadBodyModel();
const prior = priorOf(coefficients, 'woman', { others: false, mappingUncertainties: false })(null);
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

  it('refuses a singular covariance', () => {
    const twins = { n: 2, mean: [0, 0], covariance: [1, 1, 1, 1] };
    expect(() => condition(twins, [0, 1], [0, 0], [0, 0])).toThrow(
      expect.objectContaining({ code: 'singular-covariance' }),
    );
  });
});

describe('the error of a linear estimate', () => {
  it('is the conditional covariance where the gain was made for the same spread', () => {
    fc.assert(
      fc.property(someKnown, ({ known, away, noise }) => {
        const given = condition(prior, known, away, noise);
        errorCovariance(given, prior, known, noise).forEach((value, i) =>
          expect(value).toBeCloseTo(given.covariance[i]!, 9),
        );
      }),
      { numRuns: 30 },
    );
  });

  it('is never smaller than that in a wider spread, whatever the gain', () => {
    const wider = priorOf(coefficients, 'woman', { others: true, mappingUncertainties: true })(50);
    fc.assert(
      fc.property(someKnown, ({ known, away, noise }) => {
        const ours = condition(prior, known, away, noise);
        const best = condition(wider, known, away, noise);
        const error = errorCovariance(ours, wider, known, noise);
        const m = ours.rest.length;
        for (let i = 0; i < m; i++) {
          expect(error[i * m + i]!).toBeGreaterThan(best.covariance[i * m + i]! - 1e-12);
        }
      }),
      { numRuns: 30 },
    );
  });
});
