import { HOWS } from '#measure';
import { describe, expect, it } from 'vitest';
import { defaultGarmentU } from './default-garment-u.ts';
import { GARMENT_DIMENSIONS } from './garment-dimension.ts';

describe('defaultGarmentU', () => {
  /** ±10 mm and ±15 mm of half width are 10/√3 = 5.774 and 15/√3 = 8.660; ±20 mm of a length 11.547. */
  it('is the trade’s tolerance over √3', () => {
    expect(defaultGarmentU('chest-width', 'trained')).toBeCloseTo(5.774, 3);
    expect(defaultGarmentU('chest-width', 'home')).toBeCloseTo(8.66, 3);
    expect(defaultGarmentU('sleeve-length', 'home')).toBeCloseTo(11.547, 3);
  });

  it.each([
    ['chest-width', 10, 15],
    ['hem-width', 10, 20],
    ['shoulder-to-hem', 10, 20],
    ['back-neck-depth', 5, 10],
    ['front-neck-depth', 5, 10],
    ['neck-width', 10, 20],
    ['cross-back-width', 10, 20],
    ['armhole-depth', 10, 20],
    ['sleeve-top-width', 10, 20],
    ['sleeve-length', 10, 20],
    ['cuff-width', 5, 10],
  ] as const)('of %s is ±%d mm where trained, ±%d at home, twice that where guessed', (name, tighter, wider) => {
    const limits = HOWS.map((how) => defaultGarmentU(name, how) * Math.sqrt(3));
    [tighter, wider, 2 * wider, 2 * wider].forEach((limit, index) => expect(limits[index]).toBeCloseTo(limit, 9));
  });

  it('is above 0, and no smaller for a less trusted way', () => {
    for (const name of GARMENT_DIMENSIONS) {
      const us = HOWS.map((how) => defaultGarmentU(name, how));
      expect(us[0]).toBeGreaterThan(0);
      expect(us).toEqual(us.toSorted((a, b) => a - b));
    }
  });
});
