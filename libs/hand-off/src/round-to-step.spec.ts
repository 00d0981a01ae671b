import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundToStep } from './round-to-step.ts';

const anywhere = { low: -Infinity, high: Infinity };

describe('roundToStep', () => {
  it.each([
    // value, step, nearest multiple
    [20.216535, 0.125, 20.25],
    [20.216535, 0.1, 20.2],
    [0.30000000000000004, 0.1, 0.3],
    [12.7 / 25.4, 1, 1], // half-way, whichever way the division falls
    [510.9, 5, 510],
    [512.5, 5, 515],
    [0.04, 0.1, 0],
  ])('%d to the nearest %d is %d', (value, step, expected) => {
    expect(roundToStep(value, step, anywhere)).toEqual({ value: expected, within: true });
  });

  it('takes the other neighbour where the nearest lies outside the limits', () => {
    // Multiples of 5 about 511: 510 (1 away, under low) and 515 (4 away, allowed).
    expect(roundToStep(511, 5, { low: 510.5, high: 520 })).toEqual({ value: 515, within: true });
    expect(roundToStep(514, 5, { low: 505, high: 514.5 })).toEqual({ value: 510, within: true });
  });

  it('says when no multiple lies within the limits', () => {
    expect(roundToStep(511, 5, { low: 510.5, high: 514 })).toEqual({ value: 510, within: false });
  });

  it('a limit that is itself a multiple may be used', () => {
    expect(roundToStep(0.31, 0.1, { low: 0.30000000000000004, high: 0.35 })).toEqual({ value: 0.3, within: true });
  });

  it('stays within the limits where any multiple does, and is never a step or more away', () => {
    const length = fc.double({ min: 1, max: 2000, noNaN: true });
    const step = fc.constantFrom(0.1, 0.125, 0.25, 0.5, 1, 2.5, 5, 10);
    const reach = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(length, step, reach, reach, (value, by, down, up) => {
        const limits = { low: value - down, high: value + up };
        const rounded = roundToStep(value, by, limits);
        expect(Math.abs(rounded.value - value)).toBeLessThanOrEqual(by * (1 + 1e-6));
        const hasOne = Math.floor(limits.high / by) * by >= limits.low;
        if (hasOne) expect(rounded.within).toBe(true);
        if (rounded.within) {
          expect(rounded.value).toBeGreaterThanOrEqual(limits.low - 1e-6);
          expect(rounded.value).toBeLessThanOrEqual(limits.high + 1e-6);
        }
        expect(Math.abs(rounded.value / by - Math.round(rounded.value / by))).toBeLessThan(1e-6);
      }),
    );
  });
});
