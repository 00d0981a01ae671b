import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rulesWith } from './rules.ts';
import { armholeForSeam, armholeSeam, capForSeam, capSeam } from './set-in.ts';

const RULES = rulesWith({});
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('half an armhole’s edge', () => {
  /** Rise 0.4 × 100 = 40; the slope from (10, 0) to (40, 40) is √(30² + 40²) = 50; straight 100 − 40. */
  it('is bind-off, slope and straight: 10 + 50 + 60', () => {
    expect(armholeSeam(100, 40, 10, RULES)).toBeCloseTo(120, 12);
  });

  /** The rise is at most 80: √(60² + 80²) = 100, straight 300 − 80. */
  it('curves over 80 mm at most: 10 + 100 + 220', () => {
    expect(armholeSeam(300, 70, 10, RULES)).toBeCloseTo(330, 12);
  });

  it('gives its depth back', () => {
    fc.assert(
      fc.property(within(40, 400), within(0, 120), within(0, 1), (armhole, inset, share) => {
        const bindOff = (share * inset) / 2;
        const seam = armholeSeam(armhole, inset, bindOff, RULES);
        expect(armholeForSeam(seam, inset, bindOff, RULES)).toBeCloseTo(armhole, 8);
      }),
    );
  });

  it('has no depth where the inset alone is longer', () => {
    expect(armholeForSeam(30, 60, 10, RULES)).toBeNaN();
  });
});

describe('half a cap’s edge', () => {
  /** A top of 200: half of it 100, top edge 0.22 × 100 = 22, bind-off 18, so across 60, up 80: √(60² + 80²) = 100. */
  it('is bind-off, slope and half the top edge: 18 + 100 + 22', () => {
    expect(capSeam(80, 200, 18, RULES)).toBeCloseTo(140, 12);
    expect(capForSeam(140, 200, 18, RULES)).toBeCloseTo(80, 12);
  });

  it('gives its height back', () => {
    fc.assert(
      fc.property(within(20, 300), within(100, 600), within(0, 0.35), (cap, top, share) => {
        const bindOff = (share * top) / 2;
        expect(capForSeam(capSeam(cap, top, bindOff, RULES), top, bindOff, RULES)).toBeCloseTo(cap, 6);
      }),
    );
  });

  /** Across is 60; a seam of 90 leaves a slope of 90 − 18 − 22 = 50, which does not reach. */
  it('has no height where the sleeve is too wide for the armhole', () => {
    expect(capForSeam(90, 200, 18, RULES)).toBeNaN();
    expect(capForSeam(30, 200, 18, RULES)).toBeNaN();
  });

  it('is higher for a longer seam, lower for a wider sleeve', () => {
    fc.assert(
      fc.property(within(200, 300), within(1, 50), (seam, more) => {
        expect(capForSeam(seam + more, 300, 20, RULES)).toBeGreaterThan(capForSeam(seam, 300, 20, RULES));
        expect(capForSeam(seam, 300 + more, 20, RULES)).toBeLessThan(capForSeam(seam, 300, 20, RULES));
      }),
    );
  });
});
