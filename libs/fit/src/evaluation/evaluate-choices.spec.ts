import { describe, expect, it } from 'vitest';
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
} from '../../../../tests/support/fit-samples.ts';

const reachesHip = (differs: Differs): boolean => check(adviceOn(differs), 'hip').verdict !== 'n/a';

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
    expect(reachesHip({ garment: long, design: { basis: 'both', length: 'as-garment' } })).toBe(true);
    expect(reachesHip({ garment: short, design: { basis: 'both', length: 'as-garment' } })).toBe(false);
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
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(224.5, 9);
    expect(advice.notes.map(({ code }) => code)).toContain('squared-as-drop');
  });

  /** (506.2 − 460)/4 = 11.6. */
  it('stays one from an inset of 10 on', () => {
    const advice = adviceOn({ body: womanWith({ 'across-back': 460 }), design: { construction: 'squared-drop' } });
    expect(advice.design.construction).toBe('squared-drop');
  });
});
