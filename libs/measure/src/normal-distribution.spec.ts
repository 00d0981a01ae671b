import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from './normal-distribution.ts';

const density = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

/** Φ(x) by its power series: ½ + φ(x)(x + x³/3 + x⁵/(3·5) + …), Abramowitz & Stegun 1964, 26.2.11. Good for |x| < 6. */
function cdfBySeries(x: number): number {
  let term = x;
  let sum = x;
  for (let odd = 3; odd < 400; odd += 2) {
    term *= (x * x) / odd;
    sum += term;
  }
  return 0.5 + density(x) * sum;
}

/** 1 − Φ(x) by its continued fraction, φ(x)/(x + 1/(x + 2/(x + 3/(x + …)))), Abramowitz & Stegun 1964, 26.2.14. Good for x > 2. */
function tailByFraction(x: number): number {
  let below = x;
  for (let k = 400; k >= 1; k--) below = x + k / below;
  return density(x) / below;
}

describe('normalCdf', () => {
  it('agrees with the power series to 1e-14', () => {
    for (let x = -5.5; x <= 5.5; x += 0.01) expect(Math.abs(normalCdf(x) - cdfBySeries(x))).toBeLessThan(1e-14);
  });

  it('agrees with the continued fraction in the far tail, relatively', () => {
    for (let x = 3; x <= 37; x += 0.05) expect(Math.abs(normalCdf(-x) / tailByFraction(x) - 1)).toBeLessThan(1e-12);
  });

  it('is a half in the middle, 0 and 1 at the ends', () => {
    expect([-Infinity, 0, Infinity].map(normalCdf)).toEqual([0, 0.5, 1]);
    expect(normalCdf(NaN)).toBeNaN();
  });

  it('rises, and mirrors itself', () => {
    const x = fc.double({ min: -40, max: 40, noNaN: true });
    fc.assert(
      fc.property(x, x, (a, b) => {
        expect(normalCdf(Math.min(a, b))).toBeLessThanOrEqual(normalCdf(Math.max(a, b)) + 1e-16);
        expect(normalCdf(a) + normalCdf(-a)).toBeCloseTo(1, 14);
      }),
    );
  });
});

describe('normalQuantile', () => {
  /** To the ten digits of the usual tables. */
  it.each([
    [0.5, 0],
    [0.9, 1.2815515655],
    [0.95, 1.644853627],
    [0.975, 1.9599639845],
    [0.999, 3.0902323062],
  ])('at %d is %d', (p, x) => {
    expect(normalQuantile(p)).toBeCloseTo(x, 9);
  });

  it('undoes normalCdf, far into the lower tail', () => {
    fc.assert(
      fc.property(fc.double({ min: -36, max: 5, noNaN: true }), (x) => {
        const p = normalCdf(x);
        /** What rounding p in the upper tail does to x: half an ulp of p over the density. */
        const lost = x > 0 ? 2 ** -53 / density(x) : 0;
        expect(Math.abs(normalQuantile(p) - x)).toBeLessThan(1e-11 + 4 * lost);
      }),
    );
  });

  it.each([0, 1, -0.1, 1.1, NaN])('refuses %d', (p) => {
    expect(() => normalQuantile(p)).toThrow(
      expect.objectContaining({ code: 'chance-out-of-range', params: { chance: p } }),
    );
  });
});
