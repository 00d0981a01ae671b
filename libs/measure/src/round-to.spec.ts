import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundTo } from './round-to.ts';

describe('roundTo', () => {
  it.each([
    [513.5, 5, 515],
    [512.4, 5, 510],
    [0.29, 0.1, 0.3],
    [2.5, 1, 3],
    [-2.5, 1, -3],
    [-0.2, 1, 0],
    [20.3, 6.35, 19.05],
  ])('%d to the nearest %d is %d', (value, step, rounded) => {
    expect(roundTo(value, step)).toBe(rounded);
  });

  it.each([0, -1, NaN, Infinity])('refuses a step of %d', (step) => {
    expect(() => roundTo(1, step)).toThrow(expect.objectContaining({ code: 'step-invalid', params: { step } }));
  });

  it('is odd, never more than half a step away, and done once and for all', () => {
    const value = fc.double({ min: -10_000, max: 10_000, noNaN: true });
    fc.assert(
      fc.property(value, fc.constantFrom(0.1, 0.5, 1, 2.5, 3.175, 6.35, 10), (mm, step) => {
        const rounded = roundTo(mm, step);
        expect(Math.abs(rounded - mm)).toBeLessThanOrEqual(step / 2 + 1e-8);
        expect(roundTo(-mm, step)).toBe(0 - rounded);
        expect(roundTo(rounded, step)).toBe(rounded);
      }),
    );
  });
});
