import { describe, expect, it } from 'vitest';
import { HOWS } from '#measure';
import { BODY_DIMENSIONS } from './body-dimension.ts';
import { defaultU } from './default-u.ts';

describe('defaultU', () => {
  it('gives every dimension a positive, sourced uncertainty in every way of measuring', () => {
    for (const how of HOWS) {
      for (const dimension of BODY_DIMENSIONS) {
        const { u, source } = defaultU(dimension, how);
        expect(u, `${dimension} ${how}`).toBeGreaterThan(0);
        expect(source.length, `${dimension} ${how}`).toBeGreaterThan(8);
      }
    }
  });

  it('trusts a trained hand most, then the tape at home, then the rest', () => {
    for (const dimension of BODY_DIMENSIONS) {
      expect(defaultU(dimension, 'trained').u).toBeLessThan(defaultU(dimension, 'home').u);
      expect(defaultU(dimension, 'home').u, dimension).toBeLessThan(defaultU(dimension, 'estimated').u);
      if (dimension !== 'chest-girth') {
        expect(defaultU(dimension, 'home').u, dimension).toBeLessThan(defaultU(dimension, 'table').u);
      }
    }
  });

  it('is half of Table G-1 for a trained hand', () => {
    expect(defaultU('chest-girth', 'trained').u).toBe(7); // 14 / 2
    expect(defaultU('head-girth', 'trained').u).toBe(1.5); // 3 / 2
    expect(defaultU('weight', 'trained').u).toBe(150); // 0.3 kg / 2
  });

  /** A crew neck for a neck base of 371 and a head of 561, all measured at home, has u 14.8 in the sheet's description. */
  it('gives the head check of the described sheet its uncertainty', () => {
    // P(NB) = e(w, NB/5) + e(w, NB/18), w = NB/π + 25, e half an ellipse; dP/dNB at 371 is 0.9214 (central difference).
    // A rib that gives 0.5 multiplies it; the making is 1 % of the 577.5 there is.
    const u = Math.hypot(
      defaultU('head-girth', 'home').u,
      1.5 * 0.9214 * defaultU('neck-base-girth', 'home').u,
      0.01 * 577.5,
    );
    expect(u).toBeCloseTo(14.8, 1);
  });
});
