import { describe, expect, it } from 'vitest';
import {
  adviceOn,
  bodyOf,
  dimension,
  fabricOf,
  garmentOf,
  made,
  mm,
  WOMAN,
  womanWith,
} from '../../../../tests/support/fit-samples.ts';

const classic = { category: 'classic', place: 0.5 } as const;
/** What is lost where a flat girth becomes stitches, a millimetre of thickness. */
const FOLD = 4 - Math.PI;

describe('girths from a body', () => {
  /** F = 940 + 75 in an ordinary fabric; W = F/2, p = (F − (4 − π)3)/2, I = F − 12, R = I − 940. */
  it('are chest and ease: F 1015', () => {
    const advice = adviceOn();
    expect(mm(advice, 'chest-width')).toBeCloseTo(507.5, 9);
    expect(mm(advice, 'back/width')).toBeCloseTo((1015 - 3 * FOLD) / 2, 9);
    expect(advice.design.ease).toMatchObject({ chosen: 75, tableTerms: 75, flat: 75, room: 63 });
  });

  /** F = 940 + 75 + 4(7 − 3) = 1031; the flat ease is 91, yet the room is 1031 − 28 − 940 = 63 as before. */
  it('grow with the fabric, and its room stays', () => {
    const advice = adviceOn({ fabric: fabricOf(7) });
    expect(mm(advice, 'chest-width')).toBeCloseTo(1031 / 2, 9);
    expect(advice.design.ease).toMatchObject({ tableTerms: 75, flat: 91, room: 63 });
  });

  /** 940 + 75 + 4(1 − 3): for a thin fabric the allowance is negative and stays so. */
  it('shrink below an ordinary fabric', () => {
    expect(mm(adviceOn({ fabric: fabricOf(1), design: { length: 'cropped' } }), 'chest-width')).toBeCloseTo(503.5, 9);
  });

  /** 2π × 2 more at the chest whatever its sleeves; at the arm and the wrist only where they reach. */
  it.each([
    ['none', 0, 0],
    ['short', 1, 0],
    ['long', 1, 1],
  ] as const)('over a layer with sleeves %s', (sleeves, arm, wrist) => {
    const design = { construction: 'set-in', layer: { thicknessMm: 2, u: 0.3, sleeves } } as const;
    const advice = adviceOn({ design });
    expect(mm(advice, 'chest-width')).toBeCloseTo((1015 + 4 * Math.PI) / 2, 9);
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo((280 + 0.5 * 75 + arm * 4 * Math.PI) / 2, 9);
    expect(mm(advice, 'cuff-width')).toBeCloseTo((160 + 10 + 0.15 * 75 + wrist * 4 * Math.PI) / 2, 9);
    expect(advice.design.ease).toMatchObject({ tableTerms: expect.closeTo(75, 9), room: expect.closeTo(63, 9) });
  });

  /** Negative ease goes to the arm by 0.2, not by half: 280 − 0.2 × 75. */
  it('give the upper arm a smaller share of a negative ease', () => {
    const advice = adviceOn({ design: { construction: 'set-in', ease: { mm: -75 } } });
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo((280 - 15) / 2, 9);
  });

  /** κ = 635/920: E = 75κ½, wrist 10κ + 0.15E; t = t₀. */
  it('of a child take the scaled numbers', () => {
    const child = bodyOf({ ...WOMAN, 'chest-girth': 635, 'hip-girth': 600 }, 'child');
    const kappa = 635 / 920;
    const ease = (75 * (1 + kappa)) / 2;
    const advice = adviceOn({ body: child });
    expect(mm(advice, 'chest-width')).toBeCloseTo((635 + ease) / 2, 9);
    expect(mm(advice, 'cuff-width')).toBeCloseTo((160 + 10 * kappa + 0.15 * ease) / 2, 9);
  });
});

/** σ(x) = min(20κ, 0.25(0.10 − a)x) of a fabric that was pulled and gives a < 0.10; usable is half of what it stretches. */
describe('girths of a stiff fabric', () => {
  const stiff = (across: number) => fabricOf(3, { stretch: { across, along: 0.1 } });

  /** a = 0.03: 0.25 × 0.07 × 940 = 16.45 at the chest, × 280 = 4.9 at the arm; the hip’s 17.325 makes F 990 + 25 + 17.325 = 1032.325. */
  it('are larger by what the fabric does not give', () => {
    const advice = adviceOn({ fabric: stiff(0.06), design: { construction: 'set-in', length: 'cropped' } });
    expect(mm(advice, 'chest-width')).toBeCloseTo((1015 + 16.45) / 2, 9);
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo((317.5 + 4.9) / 2, 9);
    expect(mm(advice, 'cuff-width')).toBeCloseTo(181.25 / 2, 9);
    expect(mm(adviceOn({ fabric: stiff(0.06) }), 'chest-width')).toBeCloseTo(1032.325 / 2, 9);
  });

  /** Not what was chosen: the ease in the table's terms stays 75, and the room I − B = 1031.45 − 12 − 940. */
  it('keep the chosen ease, and leave more room', () => {
    const { ease } = adviceOn({ fabric: stiff(0.06), design: { length: 'cropped' } }).design;
    expect(ease).toMatchObject({ tableTerms: expect.closeTo(75, 9), room: expect.closeTo(79.45, 9) });
  });

  /** a = 0: 0.25 × 0.1 × 940 = 23.5, at most 20. */
  it('are larger by 20 at most', () => {
    const advice = adviceOn({ fabric: stiff(0), design: { length: 'cropped' } });
    expect(mm(advice, 'chest-width')).toBeCloseTo(1035 / 2, 9);
  });

  /** At a chest of 635 κ = 635/920; 0.25 × 0.1 × 635 = 15.875 is more than 20κ = 13.8. */
  it('of a child by 20κ at most', () => {
    const body = bodyOf({ ...WOMAN, 'chest-girth': 635 }, 'child');
    const kappa = 635 / 920;
    const advice = adviceOn({ body, fabric: stiff(0), design: { length: 'cropped' } });
    expect(mm(advice, 'chest-width')).toBeCloseTo((635 + (75 * (1 + kappa)) / 2 + 20 * kappa) / 2, 9);
  });

  it('are as always where the fabric gives 0.10 or was not pulled', () => {
    expect(mm(adviceOn({ fabric: stiff(0.2) }), 'chest-width')).toBeCloseTo(507.5, 9);
    expect(mm(adviceOn({ fabric: fabricOf(3) }), 'chest-width')).toBeCloseTo(507.5, 9);
  });

  /** Its u is half of it, beside the chest's 1 and four times that of t, 0.3. */
  it('are as uncertain as half of what is added', () => {
    const advice = adviceOn({ fabric: stiff(0.06), design: { length: 'cropped' } });
    expect(dimension(advice, 'chest-width').u).toBeCloseTo(Math.hypot(1, 16.45 / 2, 4 * 0.3) / 2, 9);
  });
});

describe('the hem', () => {
  it('is as wide as the chest where the hip is not wider (the tie of 1015 goes to the chest)', () => {
    const advice = adviceOn();
    expect(mm(advice, 'hem-width')).toBe(mm(advice, 'chest-width'));
    expect(advice.notes.map(({ code }) => code)).not.toContain('hip-governs');
  });

  /** Hip 1040 + 25 = 1065 > 1015. */
  it('straight, sets the whole width by a wider hip, and says so', () => {
    const advice = adviceOn({ body: womanWith({ 'hip-girth': 1040 }) });
    expect(mm(advice, 'chest-width')).toBeCloseTo(1065 / 2, 9);
    expect(advice.design.ease.tableTerms).toBeCloseTo(125, 9);
    expect(advice.notes.find(({ code }) => code === 'hip-governs')?.params).toMatchObject({
      wider: 'hip',
      outOfBand: { lies: { code: 'within', params: { category: 'loose' } }, chosen: 'classic' },
    });
  });

  it('tapered, keeps chest and hip apart', () => {
    const advice = adviceOn({ body: womanWith({ 'hip-girth': 1040 }), design: { hem: 'tapered' } });
    expect([mm(advice, 'chest-width'), mm(advice, 'hem-width')]).toEqual([507.5, 532.5]);
    expect(mm(advice, 'back/hem-width')).toBeCloseTo((1065 - 3 * FOLD) / 2, 9);
  });

  it('goes by the chest alone where the hip is not known, and its check says so; tapered, it needs the hip', () => {
    const body = womanWith({ 'hip-girth': undefined });
    const advice = adviceOn({ body });
    expect([mm(advice, 'chest-width'), mm(advice, 'hem-width')]).toEqual([507.5, 507.5]);
    expect(advice.checks.find(({ check }) => check === 'hip')).toMatchObject({
      verdict: 'unknown',
      needs: ['hip-girth'],
    });
    expect(mm(adviceOn({ body, design: { length: 'cropped' } }), 'hem-width')).toBe(507.5);
    expect(mm(adviceOn({ body, design: { hem: 'tapered' } }), 'hem-width')).toBeNaN();
  });
});

describe('girths from a garment that fits', () => {
  const own = (thicknessMm: number) =>
    garmentOf(
      { 'chest-width': 520, 'cuff-width': 100, 'sleeve-top-width': 170 },
      { construction: 'set-in', thicknessMm },
    );

  /** F = 2 × 520 − 4 × 3 + 4 × 8 = 1060: the same room in a thicker fabric; cuff 200 + 20, arm 340 + 20. */
  it('keep its room', () => {
    const design = { basis: 'garment', construction: 'set-in', length: 'cropped' } as const;
    const advice = adviceOn({ garment: own(3), fabric: fabricOf(8), design });
    expect(mm(advice, 'chest-width')).toBeCloseTo(530, 9);
    expect(mm(advice, 'cuff-width')).toBeCloseTo(110, 9);
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo(180, 9);
    expect(advice.design.ease).toMatchObject({
      room: expect.closeTo(1040 - 12 - 940, 9),
    });
  });

  /** ΔE = 40: the chest by all of it, the arm by half, the wrist by 0.15. */
  it('change by the wished ease, by shares elsewhere', () => {
    const design = {
      basis: 'garment',
      construction: 'set-in',
      length: 'cropped',
      ease: { as: 'garment', changeMm: 40 },
    } as const;
    const advice = adviceOn({ garment: own(3), design });
    expect(mm(advice, 'chest-width')).toBeCloseTo(540, 9);
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo((340 + 20) / 2, 9);
    expect(mm(advice, 'cuff-width')).toBeCloseTo((200 + 6) / 2, 9);
  });

  /** From no layer to one 2 thick with long sleeves: 2π × 2 more all round. */
  it('make room for another layer', () => {
    const layer = { thicknessMm: 2, u: 0, sleeves: 'long' } as const;
    const design = { basis: 'garment', construction: 'set-in', length: 'cropped', layer } as const;
    const advice = adviceOn({ garment: own(3), design });
    expect(mm(advice, 'chest-width')).toBeCloseTo((1040 + 4 * Math.PI) / 2, 9);
    expect(mm(advice, 'cuff-width')).toBeCloseTo((200 + 4 * Math.PI) / 2, 9);
  });

  /** A drop shoulder's sleeve top is an armhole, not an arm's girth: the body's 280 + 0.5E, E the chosen 75. */
  it('take no upper arm from a drop shoulder', () => {
    const dropped = garmentOf({ 'chest-width': 520, 'sleeve-top-width': 240 });
    const advice = adviceOn({ garment: dropped, design: { basis: 'both', construction: 'set-in', ease: classic } });
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo((280 + 0.5 * 75) / 2, 9);
  });
});

describe('girths from panels already made', () => {
  /** M = 2 × 520; F = M + (4 − π)3; E stays the chosen one for arm and wrist. */
  it('one panel: the other follows it', () => {
    const advice = adviceOn({ made: [made('back/width', 520)] });
    expect(mm(advice, 'front/width')).toBe(520);
    expect(mm(advice, 'chest-width')).toBeCloseTo((1040 + 3 * FOLD) / 2, 9);
    expect(advice.design.ease.chosen).toBe(75);
    expect(mm(advice, 'cuff-width')).toBeCloseTo(181.25 / 2, 9);
  });

  /** M = 520 + 512, and their difference is the seam check's: 8 ≤ max(10, 0.03 × 520 = 15.6). */
  it('both panels: the girth is their sum', () => {
    const advice = adviceOn({ made: [made('back/width', 520), made('front/width', 512)] });
    expect(mm(advice, 'chest-width')).toBeCloseTo((1032 + 3 * FOLD) / 2, 9);
    expect([mm(advice, 'back/width'), mm(advice, 'front/width')]).toEqual([520, 512]);
    expect(advice.checks.find(({ check }) => check === 'seam')).toMatchObject({ need: 8, have: 15.6, verdict: 'fine' });
  });

  /** A left front of 240 with a band of 30 overlapping by 30: 2 × (240 + 30) − 30 = 510. */
  it('a half front stands for its panel', () => {
    const advice = adviceOn({ design: { silhouette: 'cardigan' }, made: [made('left-front/width', 240)] });
    expect(mm(advice, 'back/width')).toBeCloseTo(510, 9);
    expect(mm(advice, 'right-front/width')).toBeCloseTo(240, 9);
  });
});
