import { describe, expect, it } from 'vitest';
import { normalCdf } from '#measure';
import {
  adviceOn,
  bodyOf,
  dimension,
  fabricOf,
  garmentOf,
  WOMAN,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';

const ease = (differs: Differs = {}) => adviceOn(differs).design.ease;
const within = (from: number, to: number, mean: number, u: number) =>
  normalCdf((to - mean) / u) - normalCdf((from - mean) / u);
const cropped = { length: 'cropped' } as const;

describe('the ease that was advised', () => {
  /** t = 8: flat 75 + 20; room 75 − 12 as ever; in the tables' terms 75. */
  it('is told in the tables’ terms, flat, and as room', () => {
    expect(ease({ fabric: fabricOf(8) })).toMatchObject({
      category: 'classic',
      place: 0.5,
      chosen: 75,
      tableTerms: expect.closeTo(75, 9),
      lies: { code: 'within', params: { category: 'classic' } },
      flat: expect.closeTo(95, 9),
      room: expect.closeTo(63, 9),
    });
  });

  it('of a plain number has no category and no chance', () => {
    expect(ease({ design: { ease: { mm: 35 } } })).toMatchObject({
      category: null,
      place: null,
      chosen: 35,
      chanceOfBand: null,
    });
    expect(ease({ design: { ...cropped, ease: { mm: 35 } } }).lies).toEqual({
      code: 'between',
      params: { closer: 'close', looser: 'classic' },
    });
  });

  it('of a garment is its own; without a body there is none', () => {
    const garment = garmentOf({ 'chest-width': 520 }, { ease: { value: 98, u: 5, covariances: {} } });
    const design = { basis: 'garment', ...cropped, ease: { as: 'garment', changeMm: 0 } } as const;
    expect(ease({ garment, design })).toMatchObject({
      category: null,
      chosen: 98,
      tableTerms: 100,
      lies: { code: 'within', params: { category: 'classic' } },
    });
    expect(ease({ garment, body: null, design })).toEqual({
      category: null,
      place: null,
      chosen: 98,
      tableTerms: null,
      lies: null,
      flat: null,
      room: null,
      chanceOfBand: null,
    });
  });
});

describe('the chance of the band', () => {
  /** u² = 15² + (4 × 0.3)² and 1 % of 1015 for the making; the ends lie 25 to either side. */
  it('takes in the body, the fabric and the making', () => {
    const body = bodyOf(WOMAN, 'woman', { 'chest-girth': 15 });
    const expected = within(50, 100, 75, Math.hypot(15, 1.2, 10.15));
    expect(ease({ body, design: cropped }).chanceOfBand).toBeCloseTo(expected, 6);
  });

  /** F = 1040 is kept, and made: what is uncertain is the wearer's chest, u 15, the new fabric, four times 5, and the making. */
  it('of a garment that fits takes in its wearer, the fabric and the making', () => {
    const body = bodyOf(WOMAN, 'woman', { 'chest-girth': 15 });
    const differs = { body, garment: garmentOf({ 'chest-width': 520 }), fabric: fabricOf(3, { thicknessU: 5 }) };
    const expected = within(50, 100, 100, Math.hypot(15, 20, 10.4));
    expect(ease({ ...differs, design: { basis: 'both', ...cropped } }).chanceOfBand).toBeCloseTo(expected, 6);
  });

  it('of the loosest band goes on beyond its end', () => {
    const loose = { ease: { category: 'oversized', place: 1 } } as const;
    const body = bodyOf({ ...WOMAN, 'hip-girth': 1400 });
    expect(ease({ body, design: loose }).lies).toEqual({ code: 'within', params: { category: 'oversized' } });
    expect(ease({ body, design: loose }).chanceOfBand).toBeCloseTo(1, 6);
  });

  it('is small where the hip takes the chest out of it', () => {
    const body = bodyOf({ ...WOMAN, 'hip-girth': 1100 });
    expect(ease({ body })).toMatchObject({
      tableTerms: expect.closeTo(185, 9),
      lies: { code: 'within', params: { category: 'oversized' } },
    });
    expect(ease({ body }).chanceOfBand).toBeLessThan(1e-6);
  });
});

describe('how far the width may be rounded for its ease', () => {
  const range = (differs: Differs) => {
    const { low, value, high } = dimension(adviceOn(differs), 'back/width');
    return [low! - value!, high! - value!].map((by) => 2 * by);
  };
  const wide = bodyOf({ ...WOMAN, 'shoulder-girth': 800, 'hip-girth': 700 });

  /** Classic 50 to 100 about 75; at place 0 only upward. */
  it('is to the ends of its band', () => {
    expect(range({ body: wide, design: cropped })).toEqual([expect.closeTo(-25, 6), expect.closeTo(25, 6)]);
    const closest = { ease: { category: 'classic', place: 0 }, ...cropped } as const;
    expect(range({ body: wide, design: closest })).toEqual([expect.closeTo(0, 6), expect.closeTo(50, 6)]);
  });

  /** 60 lies in classic: 10 down and 40 up. 37 lies in none: 25 either way. */
  it('of a plain number is to the ends of the band it lies in, or 25', () => {
    expect(range({ body: wide, design: { ease: { mm: 60 }, ...cropped } })).toEqual([
      expect.closeTo(-10, 6),
      expect.closeTo(40, 6),
    ]);
    expect(range({ body: wide, design: { ease: { mm: 37 }, ...cropped } })).toEqual([
      expect.closeTo(-25, 6),
      expect.closeTo(25, 6),
    ]);
  });
});
