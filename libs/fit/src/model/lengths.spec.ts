import { describe, expect, it } from 'vitest';
import type { Figure } from '#body';
import {
  adviceOn,
  dimension,
  bodyOf,
  fabricOf,
  garmentOf,
  mm,
  WOMAN,
  womanWith,
} from '../../../../tests/support/fit-samples.ts';

describe('the centre-back length', () => {
  /** Woman: back waist 437 + 0, 150, 280. Man: back hip 680 − 120, 0, + 50. Child: back waist + 0, 50, 150. */
  it.each([
    ['woman', 'cropped', 437],
    ['woman', 'regular', 587],
    ['woman', 'long', 717],
    ['unsaid', 'regular', 587],
    ['man', 'cropped', 560],
    ['man', 'regular', 680],
    ['man', 'long', 730],
    ['child', 'cropped', 437],
    ['child', 'regular', 487],
    ['baby', 'long', 587],
  ] as const)('of a %s, %s: %d', (figure: Figure, length, expected) => {
    expect(mm(adviceOn({ body: bodyOf(WOMAN, figure), design: { length } }), 'centre-back-length')).toBe(expected);
  });

  /** 437 + 250. */
  it('of a man whose back hip length was not taken goes from the waist', () => {
    const body = bodyOf({ ...WOMAN, 'back-hip-length': undefined }, 'man');
    expect(mm(adviceOn({ body }), 'centre-back-length')).toBe(687);
  });

  it('is a maker’s own, and the shoulder line lies a back neck depth above it', () => {
    const advice = adviceOn({ design: { length: 'custom', customLengthMm: 555 } });
    expect(mm(advice, 'centre-back-length')).toBe(555);
    expect(mm(advice, 'shoulder-to-hem')).toBeCloseTo(555 + 371 / 18, 9);
  });

  /** 620 − 22. */
  it('as the garment’s is its shoulder to hem less its back neck depth, about the wearer’s where it was not measured', () => {
    const garment = garmentOf({ 'chest-width': 520, 'shoulder-to-hem': 620, 'back-neck-depth': 22 });
    const asGarment = { basis: 'both', length: 'as-garment' } as const;
    expect(mm(adviceOn({ garment, design: asGarment }), 'centre-back-length')).toBe(598);
    const unmeasured = adviceOn({ garment: garmentOf({ 'shoulder-to-hem': 620 }), design: asGarment });
    expect(mm(unmeasured, 'centre-back-length')).toBeCloseTo(620 - 371 / 18, 9);
    expect(dimension(unmeasured, 'centre-back-length').u).toBeCloseTo(Math.hypot(5, 8, 1 / 18), 9);
    const ofBody = { basis: 'body', length: 'as-garment' } as const;
    expect(mm(adviceOn({ garment, design: ofBody }), 'centre-back-length')).toBe(598);
    expect(mm(adviceOn({ garment, design: { basis: 'both', length: 'regular' } }), 'centre-back-length')).toBe(587);
  });
});

describe('nape to cuff', () => {
  const nape = (rest: Parameters<typeof garmentOf>[0], more: Parameters<typeof garmentOf>[1] = {}) =>
    mm(
      adviceOn({ garment: garmentOf({ 'chest-width': 520, ...rest }, more), design: { basis: 'both' } }),
      'neck-to-cuff',
    );

  it('is the body’s', () => {
    expect(mm(adviceOn(), 'neck-to-cuff')).toBe(743);
  });

  it('is a garment’s sleeve from the centre back as it is', () => {
    expect(nape({ 'sleeve-length': 760 }, { sleeveFrom: 'centre-back' })).toBe(760);
  });

  it('is half the cross back and the sleeve of one measured from its seam', () => {
    expect(nape({ 'sleeve-length': 550, 'cross-back-width': 410 }, { construction: 'set-in' })).toBe(755);
  });

  /** A drop shoulder's seam lies at its panel's edge: p = (1040 − (4 − π)3)/2. */
  it('is half the panel and the sleeve of a drop shoulder', () => {
    expect(nape({ 'sleeve-length': 490 })).toBeCloseTo((520 - ((4 - Math.PI) / 2) * 3) / 2 + 490, 9);
  });

  /** 180/2 + 660. */
  it('is half the neck and the sleeve of a raglan', () => {
    expect(nape({ 'sleeve-length': 660, 'neck-width': 180 }, { construction: 'raglan' })).toBe(750);
  });

  /** 750 less half the neck on the piece, 180/2 + β. */
  it('gives a raglan like one that fits its sleeve less the new band', () => {
    const garment = garmentOf(
      { 'chest-width': 520, 'sleeve-length': 660, 'neck-width': 180 },
      { construction: 'raglan' },
    );
    for (const bandMm of [10, 25, 40]) {
      const design = { basis: 'garment', construction: 'raglan', bandMm } as const;
      expect(mm(adviceOn({ garment, design }), 'sleeve-length')).toBeCloseTo(660 - bandMm, 9);
    }
  });

  /** (404 + 0.12 × 75)/2 + 540; (p + 404)/4 + 540 for a squared drop, whose p is 520 − (4 − π)3/2. */
  it('is half the wearer’s back and its sleeve, where that of the garment was not measured', () => {
    expect(nape({ 'sleeve-length': 540 }, { construction: 'set-in' })).toBeCloseTo(206.5 + 540, 9);
    const panel = 520 - ((4 - Math.PI) / 2) * 3;
    expect(nape({ 'sleeve-length': 540 }, { construction: 'squared-drop' })).toBeCloseTo((panel + 404) / 4 + 540, 9);
  });

  it('stays the body’s where the garment does not say where its seam lies, or its sleeve is short', () => {
    expect(nape({ 'sleeve-length': 550 }, { construction: 'raglan' })).toBe(743);
    expect(nape({ 'sleeve-length': 150 }, { construction: 'set-in', sleeve: 'short' })).toBe(743);
  });
});

describe('the armhole', () => {
  /** A₀ = 184 + 8 + 0.1 × 75 = 199.5; deeper by 25, 15, 30. */
  it.each([
    ['set-in', 'armhole-depth', 199.5],
    ['drop-shoulder', 'armhole-depth', 224.5],
    ['squared-drop', 'armhole-depth', 214.5],
    ['raglan', 'raglan-depth', 229.5],
  ] as const)('of a %s', (construction, name, expected) => {
    expect(mm(adviceOn({ design: { construction } }), name)).toBeCloseTo(expected, 9);
  });

  /** (π/2)(7 − 3) for the fabric, and π × 2 for a layer whose sleeves reach the arm. */
  it('keeps its inner edge in a thick fabric and over sleeves', () => {
    const layer = { thicknessMm: 2, u: 0, sleeves: 'short' } as const;
    const advice = adviceOn({ fabric: fabricOf(7), design: { construction: 'set-in', layer } });
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(199.5 + 2 * Math.PI + 2 * Math.PI, 9);
  });

  /** 2A − 3π ≥ 1.02 × 460 = 469.2: A ≥ 234.6 + 1.5π = 239.3 > 224.5; a squared drop's edge has its inset i = (p − 404)/4 too. */
  it('is deep enough for the arm by 2 %', () => {
    const body = womanWith({ 'scye-girth': 460 });
    const least = 234.6 + 1.5 * Math.PI;
    expect(mm(adviceOn({ body }), 'armhole-depth')).toBeCloseTo(least, 9);
    const squared = adviceOn({ body, design: { construction: 'squared-drop' } });
    const inset = ((1015 - (4 - Math.PI) * 3) / 2 - 404) / 4;
    expect(mm(squared, 'armhole-depth')).toBeCloseTo(Math.max(least - inset, 214.5), 9);
    const garment = garmentOf({ 'chest-width': 520, 'armhole-depth': 220 });
    expect(mm(adviceOn({ body, garment, design: { basis: 'both' } }), 'armhole-depth')).toBeCloseTo(least, 9);
  });

  /** E = 25 < 50: the fabric, unmeasured, gives 0.10; 1.1(2A − 3π) ≥ 469.2 from A = 218.0 on, and the rule says 184 + 8 + 2.5 + 25. */
  it('of a close fit counts on the fabric’s stretch', () => {
    const close = { ease: { mm: 25 } } as const;
    const at = (scye: number) =>
      mm(adviceOn({ body: womanWith({ 'scye-girth': scye }), design: close }), 'armhole-depth');
    expect(at(460)).toBeCloseTo(219.5, 9);
    expect(at(480)).toBeCloseTo((1.02 * 480) / 2.2 + 1.5 * Math.PI, 9);
  });

  /** Upper arm 500 + 0.5 × 75 = 537.5, half of it 268.75 > 224.5. */
  it('of a drop shoulder is at least half the upper arm’s girth', () => {
    expect(mm(adviceOn({ body: womanWith({ 'upper-arm-girth': 500 }) }), 'armhole-depth')).toBeCloseTo(268.75, 9);
  });

  /** A drop shoulder's 240 is a set-in's 240 − 25 = 215; (π/2)(5 − 3) for the new fabric. */
  it('of a garment that fits is carried to another construction', () => {
    const garment = garmentOf({ 'chest-width': 520, 'armhole-depth': 240 });
    const advice = adviceOn({ garment, fabric: fabricOf(5), design: { basis: 'both', construction: 'set-in' } });
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(215 + Math.PI, 9);
  });
});
