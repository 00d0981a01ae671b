import { describe, expect, it } from 'vitest';
import { DomainError } from '#measure';
import {
  adviceOn,
  bodyOf,
  check,
  garmentOf,
  made,
  mm,
  WOMAN,
  womanWith,
  type Differs,
} from '../../../tests/support/fit-samples.ts';

const reachesHip = (differs: Differs): boolean => check(adviceOn(differs), 'hip').verdict !== 'n/a';

describe('a basis without what it needs', () => {
  const refusal = (differs: Differs): unknown => {
    try {
      adviceOn(differs);
    } catch (error) {
      return error;
    }
    return undefined;
  };

  it.each(['garment', 'both'] as const)('"%s": a garment with its chest width', (basis) => {
    for (const garment of [null, garmentOf({ 'sleeve-length': 500 })]) {
      const error = refusal({ garment, design: { basis } });
      expect(error).toBeInstanceOf(DomainError);
      expect(error).toMatchObject({ code: 'garment-chest-width-missing', pointer: '/garment' });
    }
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

describe('the hip counts', () => {
  /** From 100κ below the back waist of 437; a man's from a regular length on. */
  it.each<[string, Differs, boolean]>([
    ['a woman’s cropped', { design: { length: 'cropped' } }, false],
    ['a woman’s regular', {}, true],
    ['99 below the waist', { design: { length: 'custom', customLengthMm: 536 } }, false],
    ['100 below the waist', { design: { length: 'custom', customLengthMm: 537 } }, true],
    ['a man’s cropped', { body: bodyOf(WOMAN, 'man'), design: { length: 'cropped' } }, false],
    ['a man’s regular', { body: bodyOf(WOMAN, 'man') }, true],
    ['a large child’s regular, 50 of 100κ = 69', { body: bodyOf({ ...WOMAN, 'chest-girth': 635 }, 'child') }, false],
    ['a baby’s regular, 50 of 100κ = 50', { body: bodyOf({ ...WOMAN, 'chest-girth': 460 }, 'baby') }, true],
  ])('in %s', (_, differs, expected) => {
    expect(reachesHip(differs)).toBe(expected);
  });

  it('by the length of a garment that is taken over', () => {
    const long = garmentOf({ 'chest-width': 520, 'shoulder-to-hem': 620, 'back-neck-depth': 20 });
    const short = garmentOf({ 'chest-width': 520, 'shoulder-to-hem': 500, 'back-neck-depth': 20 });
    expect(reachesHip({ garment: long, design: { basis: 'both', length: 'cropped' } })).toBe(true);
    expect(reachesHip({ garment: short, design: { basis: 'both', length: 'long' } })).toBe(false);
  });
});

describe('the hip counts for a body already made', () => {
  const toUnderarm = (mm: number, length: 'cropped' | 'regular'): boolean =>
    reachesHip({ made: [made('back/body-to-underarm', mm)], design: { length } });

  it('as far down as it was made, whatever was wished', () => {
    expect([400, 250].map((mm) => toUnderarm(mm, 'cropped'))).toEqual([true, false]);
    expect([400, 250].map((mm) => toUnderarm(mm, 'regular'))).toEqual([true, false]);
  });
});

describe('a squared drop with hardly an inset', () => {
  /** (506.2 − 480)/4 = 6.6 < 10. */
  it('is a drop shoulder, with a drop shoulder’s armhole, and the sheet says so', () => {
    const advice = adviceOn({ body: womanWith({ 'across-back': 480 }), design: { construction: 'squared-drop' } });
    expect(advice.design.construction).toBe('drop-shoulder');
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(242.5, 9);
    expect(advice.notes.map(({ code }) => code)).toContain('squared-as-drop');
  });

  /** (506.2 − 460)/4 = 11.6. */
  it('stays one from an inset of 10 on', () => {
    const advice = adviceOn({ body: womanWith({ 'across-back': 460 }), design: { construction: 'squared-drop' } });
    expect(advice.design.construction).toBe('squared-drop');
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
