import { describe, expect, it } from 'vitest';
import { adviceOn, garmentOf, mm, womanWith } from '../../../../tests/support/fit-samples.ts';

describe('what a garment does not give', () => {
  /** A set-in of 3 mm in a fabric of 3 mm; chest, back and wrist of the body: F 940 + 75. */
  it('the body does', () => {
    const garment = garmentOf({ 'shoulder-to-hem': 620, 'back-neck-depth': 22, 'cuff-width': 100 });
    const advice = adviceOn({ garment, design: { basis: 'both', length: 'as-garment' } });
    expect(mm(advice, 'chest-width')).toBeCloseTo(1015 / 2, 9);
    expect(mm(advice, 'centre-back-length')).toBeCloseTo(598, 9);
    expect(mm(advice, 'cuff-width')).toBeCloseTo(100, 9);
  });

  it('a sleeve from the seam of a drop shoulder, whose chest tells where that is', () => {
    const garment = garmentOf({ 'sleeve-length': 500 }, { construction: 'drop-shoulder' });
    expect(mm(adviceOn({ garment, design: { basis: 'both' } }), 'neck-to-cuff')).toBe(743);
  });

  it('is not needed where nobody is known', () => {
    const garment = garmentOf({ 'chest-width': 500 });
    expect(mm(adviceOn({ body: null, garment, design: { basis: 'garment', length: 'cropped' } }), 'chest-width')).toBe(
      500,
    );
  });
});

describe('what is taken from a garment that fits', () => {
  const measures = {
    'chest-width': 530,
    'neck-width': 170,
    'front-neck-depth': 90,
    'back-neck-depth': 25,
    'hem-width': 500,
  };

  it('is everything it gives, with the body for the rest', () => {
    const body = womanWith({ 'hip-girth': 960 });
    const advice = adviceOn({ body, garment: garmentOf(measures), design: { basis: 'both', hem: 'tapered' } });
    const paths = ['chest-width', 'hem-width', 'neck-width', 'front-neck-depth', 'back-neck-depth', 'neck-to-cuff'];
    expect(paths.map((path) => mm(advice, path))).toEqual([530, 500, 170, 90, 25, 743]);
  });

  it('is nothing where the basis is the body', () => {
    expect(mm(adviceOn({ garment: garmentOf(measures) }), 'chest-width')).toBe(507.5);
  });

  it('gives way to the maker’s own neck', () => {
    const design = { basis: 'both', neckWidthMm: 150 } as const;
    expect(mm(adviceOn({ garment: garmentOf(measures), design }), 'neck-width')).toBe(150);
  });
});

describe('the hem of a kept chest', () => {
  /** A chest of 480 kept; a hip of 990 + 25 asks for 507.5. */
  it('tapers where the hip asks for more and nothing was said, and is wide enough for the hip', () => {
    const garment = garmentOf({ 'chest-width': 480, 'hem-width': 470 });
    const design = { basis: 'both', hem: null, length: 'regular' } as const;
    const widths = (differs: object) => {
      const advice = adviceOn({ garment, design: { ...design, ...differs } });
      return [mm(advice, 'chest-width'), mm(advice, 'hem-width')];
    };
    // The kept hem gives way to hip + 4t = 1002.
    expect(widths({})).toEqual([480, 501]);
    expect(widths({ hem: 'straight' })).toEqual([501, 501]);
    expect(widths({ length: 'cropped' })).toEqual([480, 480]);
  });
});

describe('a sleeve top of a drop shoulder', () => {
  /** 240 deep as its sleeve is 240 wide; a set-in has 25 less. */
  it('is its armhole', () => {
    const garment = garmentOf({ 'chest-width': 520, 'sleeve-top-width': 240 });
    expect(mm(adviceOn({ garment, design: { basis: 'both' } }), 'armhole-depth')).toBeCloseTo(240, 9);
    const design = { basis: 'both', construction: 'set-in' } as const;
    expect(mm(adviceOn({ garment, design }), 'armhole-depth')).toBeCloseTo(215, 9);
  });
});

describe('a region that wears close', () => {
  /** 40 less ease than the garment has: the chest by all of it, the cuff by 0.15. */
  it('gets the ease that it lacks', () => {
    const measures = { 'chest-width': 520, 'cuff-width': 100 };
    const design = { basis: 'both', ease: { as: 'garment', changeMm: 0 } } as const;
    const close = garmentOf(measures, { wears: { chest: 'close', cuff: 'close' } });
    expect(mm(adviceOn({ garment: close, design }), 'chest-width')).toBeCloseTo(540, 9);
    expect(mm(adviceOn({ garment: close, design }), 'cuff-width')).toBeCloseTo(103, 9);
    const roomy = garmentOf(measures, { wears: { chest: 'roomy' } });
    expect(mm(adviceOn({ garment: roomy, design: { ...design, length: 'cropped' } }), 'chest-width')).toBeCloseTo(
      500,
      9,
    );
  });
});

describe('a garment’s neck', () => {
  it('is kept unless its neckline is said to be another', () => {
    const width = (neckline: 'crew' | 'v' | null) =>
      mm(
        adviceOn({ garment: garmentOf({ 'neck-width': 190 }, { neckline }), design: { basis: 'both' } }),
        'neck-width',
      );
    expect([width(null), width('crew')]).toEqual([190, 190]);
    expect(width('v')).not.toBe(190);
  });
});
