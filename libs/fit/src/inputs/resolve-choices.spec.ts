import { describe, expect, it } from 'vitest';
import { DomainError } from '#measure';
import { adviceOn, garmentOf, mm, type Differs } from '../../../../tests/support/fit-samples.ts';

describe('a basis without what it needs', () => {
  const refusal = (differs: Differs): unknown => {
    try {
      adviceOn(differs);
    } catch (error) {
      return error;
    }
    return undefined;
  };

  it.each(['garment', 'both'] as const)('"%s": a garment', (basis) => {
    const error = refusal({ garment: null, design: { basis } });
    expect(error).toBeInstanceOf(DomainError);
    expect(error).toMatchObject({ code: 'garment-missing', pointer: '/garment' });
  });

  it('"garment": its chest width', () => {
    const error = refusal({ garment: garmentOf({ 'sleeve-length': 500 }), design: { basis: 'garment' } });
    expect(error).toMatchObject({ code: 'garment-chest-width-missing', pointer: '/garment' });
  });

  /** A set-in of 3 mm in a fabric of 3 mm; chest, back and wrist of the body: F 940 + 75, Y 404. */
  it('"both": the body’s chest beside a garment without one', () => {
    const garment = garmentOf({ 'shoulder-to-hem': 620, 'back-neck-depth': 22, 'cuff-width': 100 });
    const advice = adviceOn({ garment, design: { basis: 'both' } });
    expect(mm(advice, 'chest-width')).toBeCloseTo(1015 / 2, 9);
    expect(mm(advice, 'centre-back-length')).toBeCloseTo(598, 9);
    expect(mm(advice, 'cuff-width')).toBeCloseTo(100, 9);
    expect(advice.notes.map(({ code }) => code)).not.toContain('garment-and-ease');
  });

  it('a sleeve from the seam of a drop shoulder, whose chest tells where that is', () => {
    const garment = garmentOf({ 'sleeve-length': 500 }, { construction: 'drop-shoulder' });
    expect(mm(adviceOn({ garment, design: { basis: 'both' } }), 'neck-to-cuff')).toBe(743);
  });

  it.each(['body', 'both'] as const)('"%s": a body', (basis) => {
    const error = refusal({ body: null, garment: garmentOf({ 'chest-width': 500 }), design: { basis } });
    expect(error).toMatchObject({ code: 'body-missing', pointer: '/body' });
  });

  it('"garment" needs no body', () => {
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
    const advice = adviceOn({ garment: garmentOf(measures), design: { basis: 'both', hem: 'tapered' } });
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
