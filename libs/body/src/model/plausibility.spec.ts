import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { condition, explain, type Gaussian } from './gaussian.ts';
import type { KnownLogs } from './known-logs.ts';
import { plausibilityOf } from './plausibility.ts';

const N = 5;
const number = (most: number) => fc.double({ min: -most, max: most, noNaN: true });

/** A·Aᵀ + 1 on the diagonal, which is positive definite whatever A is. */
const gaussian: fc.Arbitrary<Gaussian> = fc
  .record({
    a: fc.array(number(2), { minLength: N * N, maxLength: N * N }),
    mean: fc.array(number(3), { minLength: N, maxLength: N }),
  })
  .map(({ a, mean }) => ({
    n: N,
    mean,
    covariance: Array.from({ length: N * N }, (_, cell) => {
      const [row, column] = [Math.floor(cell / N), cell % N];
      const dot = mean.reduce((sum, _, k) => sum + a[row * N + k]! * a[column * N + k]!, 0);
      return dot + (row === column ? 1 : 0);
    }),
  }));

const seen: fc.Arbitrary<KnownLogs> = fc
  .record({
    at: fc.shuffledSubarray([0, 1, 2, 3, 4], { minLength: 2 }),
    logs: fc.array(number(5), { minLength: N, maxLength: N }),
    noise: fc.array(fc.double({ min: 0.1, max: 1, noNaN: true }), { minLength: N, maxLength: N }),
  })
  .map(({ at, logs, noise }) => ({ at, logs: logs.slice(0, at.length), noise: noise.slice(0, at.length) }));

describe('how well values agree', () => {
  it('is the Mahalanobis distance, and each value’s distance from what the others lead to expect', () => {
    fc.assert(
      fc.property(gaussian, seen, (prior, known) => {
        const { at, logs, noise } = known;
        const { distance, z } = plausibilityOf(prior, known);
        expect(distance).toBeCloseTo(explain(prior, at, logs, noise).distance, 6);
        at.forEach((place, i) => {
          const others = <T>(list: readonly T[]) => list.filter((_, j) => j !== i);
          const expected = condition(prior, others(at), others(logs), others(noise), [place]);
          expect(z[i]).toBeCloseTo((logs[i]! - expected.mean[0]!) / Math.sqrt(expected.covariance[0]! + noise[i]!), 6);
        });
      }),
    );
  });

  it('after some values move is what it would be of the moved values', () => {
    const by = fc.tuple(number(2), number(2));
    fc.assert(
      fc.property(gaussian, seen, by, (prior, known, steps) => {
        const before = plausibilityOf(prior, known);
        const moves = steps.map((step, index) => ({ index, by: step }));
        const logs = known.logs.map((log, i) => log + (steps[i] ?? 0));
        const moved = plausibilityOf(prior, { ...known, logs });
        const { fall, z } = before.after(moves);
        expect(fall).toBeCloseTo(before.distance - moved.distance, 6);
        expect(z).toBeCloseTo(Math.max(...moves.map(({ index }) => Math.abs(moved.z[index]!))), 6);
      }),
    );
  });
});
