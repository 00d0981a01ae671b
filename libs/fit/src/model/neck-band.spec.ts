import { describe, expect, it } from 'vitest';
import type { Silhouette } from '#fit';
import { adviceOn, bodyOf, fabricOf, mm, WOMAN, womanWith } from '../../../../tests/support/fit-samples.ts';

/** 371/π + 25. */
const CREW = 371 / Math.PI + 25;
/** Rib so stretchy that no head widens the neck. */
const fabric = (thicknessMm: number) => fabricOf(thicknessMm, { ribStretch: 4 });

/** β = max(25κ½, min(4t, 35κ)). */
describe('the neck band', () => {
  it.each([
    [3, 25],
    [6.25, 25],
    [8, 32],
    [12, 35],
  ])('in a fabric of %d is %d deep', (thickness, depth) => {
    expect(mm(adviceOn({ fabric: fabric(thickness) }), 'band-depth')).toBeCloseTo(depth, 9);
  });

  /** κ = 635/920: at least 25κ½ = 21.1; at t = 8 the cap of 35κ = 24.2. */
  it('of a child is scaled', () => {
    const body = bodyOf({ ...WOMAN, 'chest-girth': 635 }, 'child');
    const kappa = 635 / 920;
    expect(mm(adviceOn({ body, fabric: fabric(3) }), 'band-depth')).toBeCloseTo((25 * (1 + kappa)) / 2, 9);
    expect(mm(adviceOn({ body, fabric: fabric(8) }), 'band-depth')).toBeCloseTo(35 * kappa, 9);
  });

  /** (240 − 143.1 − 60)/2 = 18.5; a vest has four bands there: (300 − 143.1 − 60)/4 = 24.2; a raglan has no shoulders. */
  it('leaves the shoulders of a crew', () => {
    const depth = (across: number, silhouette: Silhouette, construction: 'set-in' | 'raglan' = 'set-in') => {
      const body = womanWith({ 'across-back': across });
      return mm(adviceOn({ body, fabric: fabric(3), design: { silhouette, construction } }), 'band-depth');
    };
    expect(depth(240, 'pullover')).toBeCloseTo((180 - CREW) / 2, 9);
    expect(depth(300, 'vest')).toBeCloseTo((240 - CREW) / 4, 9);
    expect(depth(240, 'pullover', 'raglan')).toBeCloseTo(25, 9);
  });

  it('is 10 deep at least', () => {
    expect(mm(adviceOn({ body: womanWith({ 'across-back': 200 }), fabric: fabric(3) }), 'band-depth')).toBeCloseTo(
      10,
      9,
    );
  });

  /** The crew and 20 of the 60 are left between two bands of (404 − 143.1 − 20)/2 = 120.5. */
  it('of the maker’s own is as she says, as far as it leaves a shoulder', () => {
    const own = (bandMm: number) => adviceOn({ fabric: fabric(3), design: { bandMm } });
    expect(mm(own(60), 'band-depth')).toBe(60);
    expect(own(60).notes.map(({ code }) => code)).not.toContain('band-ends');
    const most = (384 - CREW) / 2;
    expect(mm(own(150), 'band-depth')).toBeCloseTo(most, 9);
    expect(own(150).notes).toContainEqual({
      code: 'band-ends',
      params: { askedMm: 150, depthMm: expect.closeTo(most, 9) },
    });
  });
});

/** max(50κ½, min(7t, 70κ)), less where a short body below the arm has not 20κ beside it. */
describe('the rib', () => {
  it.each([
    [3, 50],
    [8, 56],
    [12, 70],
  ])('in a fabric of %d is %d deep', (thickness, depth) => {
    expect(mm(adviceOn({ fabric: fabric(thickness) }), 'rib-depth')).toBeCloseTo(depth, 9);
  });

  /** Drop: L + 371/18 − 224.5 lies below the arm. At L = 260 that is 56.1, and 36.1 with 20 left; at 230 26.1, and the least of 20. */
  it('of a short body leaves 20 below the arm, and is 20 at least', () => {
    const depth = (customLengthMm: number) =>
      mm(adviceOn({ fabric: fabric(3), design: { length: 'custom', customLengthMm } }), 'rib-depth');
    expect(depth(300)).toBeCloseTo(50, 9);
    expect(depth(260)).toBeCloseTo(260 + 371 / 18 - 244.5, 9);
    expect(depth(230)).toBeCloseTo(20, 9);
  });

  it('of the maker’s own is as she says', () => {
    const design = { length: 'custom', customLengthMm: 260, ribMm: 70 } as const;
    expect(mm(adviceOn({ design }), 'rib-depth')).toBe(70);
  });
});
