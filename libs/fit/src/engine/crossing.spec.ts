import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossing } from './crossing.ts';

/** The crossing between two places. */
const between = (below: number, above: number, f: (x: number) => number, near?: number): number =>
  crossing([below, f(below)], [above, f(above)], f, near);

describe('where a function crosses zero', () => {
  it('of x² − 2 is √2, to the last digits', () => {
    expect(between(0, 2, (x) => x * x - 2)).toBeCloseTo(Math.SQRT2, 14);
  });

  it('may be sought from above: the end that holds is the second', () => {
    expect(between(1, 0, (x) => 0.25 - x)).toBeCloseTo(0.25, 14);
  });

  it('is the end itself where that is the root', () => {
    expect(between(-1, 0, (x) => x)).toBe(0);
  });

  it('of a cube through any number is that number', () => {
    const place = fc.double({ min: -900, max: 900, noNaN: true });
    fc.assert(
      fc.property(place, (root) => {
        expect(Math.abs(between(-1000, 1000, (x) => (x - root) ** 3 + (x - root)) - root)).toBeLessThan(1e-9);
      }),
    );
  });

  it('is found beside a kink, as of a clamp', () => {
    expect(between(0, 100, (x) => Math.min(x, 30) - 20 + Math.max(0, x - 80))).toBeCloseTo(20, 10);
  });

  /** Nearly flat beside the second end, steep beyond it: a step by the two heights alone hardly moves. */
  it('is found behind a long flat', () => {
    const flat = (x: number): number => 1e-9 + Math.min(0, 7 * (7 - x));
    expect(between(10, 0, flat)).toBeCloseTo(7, 9);
    expect(flat(between(10, 0, flat))).toBeGreaterThanOrEqual(0);
  });

  it('is the side that is not negative where the function jumps', () => {
    const jump = (x: number): number => (x > 2 ? 5 : -1);
    expect(jump(between(0, 10, jump))).toBe(5);
    const fall = (x: number): number => (x > 2 ? -5 : 1);
    expect(fall(between(10, 0, fall))).toBe(1);
  });

  it('is near enough where it is said how near', () => {
    const asked: number[] = [];
    const cube = (x: number): number => {
      asked.push(x);
      return x ** 3 - 8;
    };
    expect(Math.abs(cube(between(0, 5, cube, 0.1)))).toBeLessThan(0.1);
    const roughly = asked.length;
    between(0, 5, cube);
    expect(asked.length - roughly).toBeGreaterThan(roughly);
  });
});
