import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate, propagateCovariance } from './propagate.ts';

/** Most doubles are next to nothing: these are spread evenly. */
const hundredths = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((hundredth) => hundredth / 100);
const u = hundredths(0, 100);
const slope = hundredths(-10, 10);
const r = hundredths(-1, 1);

describe('propagate', () => {
  it('adds independent inputs in quadrature: 3, 4 → 5', () => {
    expect(propagate([1, -2], [3, 2])).toBe(5);
  });

  it('adds inputs that move together, and cancels their difference', () => {
    const together = [
      [1, 1],
      [1, 1],
    ];
    expect(propagate([1, 1], [3, 4], together)).toBe(7);
    expect(propagate([1, -1], [3, 3], together)).toBe(0);
  });

  /** JCGM 100:2008, 5.2.2, example: ten resistors in series, each 1000 Ω with u = 100 mΩ and r = 1: u = 1 Ω, not 0.32 Ω. */
  it('gives 1 Ω for ten resistors calibrated against one standard', () => {
    const ten = Array.from({ length: 10 }, () => 1);
    const us = ten.map(() => 0.1);
    expect(
      propagate(
        ten,
        us,
        ten.map(() => ten),
      ),
    ).toBeCloseTo(1, 12);
    expect(propagate(ten, us)).toBeCloseTo(0.3162, 4);
  });

  it('equals the written-out formula for two inputs', () => {
    fc.assert(
      fc.property(slope, slope, u, u, r, (a, b, ua, ub, rho) => {
        const variance = (a * ua) ** 2 + (b * ub) ** 2 + 2 * a * b * rho * ua * ub;
        const matrix = [
          [1, rho],
          [rho, 1],
        ];
        expect(propagate([a, b], [ua, ub], matrix) ** 2).toBeCloseTo(Math.max(0, variance), 6);
      }),
    );
  });

  it('takes covariances: 1·4 + 4·9 − 2·2·3 = 28', () => {
    const covariance = [
      [4, 3],
      [3, 9],
    ];
    expect(propagateCovariance([1, -2], covariance)).toBeCloseTo(Math.sqrt(28), 12);
  });

  it('agrees with itself in covariances', () => {
    fc.assert(
      fc.property(slope, slope, u, u, r, (a, b, ua, ub, rho) => {
        const correlation = [
          [1, rho],
          [rho, 1],
        ];
        const covariance = [
          [ua * ua, rho * ua * ub],
          [rho * ua * ub, ub * ub],
        ];
        expect(propagateCovariance([a, b], covariance) ** 2).toBeCloseTo(
          propagate([a, b], [ua, ub], correlation) ** 2,
          6,
        );
      }),
    );
  });
});
