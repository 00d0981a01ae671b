import { describe, expect, it } from 'vitest';
import { adviceOn, check, womanWith, type Differs } from '../../../../tests/support/fit-samples.ts';
import type { Advice } from '../messages/advice.ts';

const setIn = (differs: Differs = {}): Advice =>
  adviceOn({ ...differs, design: { construction: 'set-in', ...differs.design } });

/**
 * A set-in's seam under the arm lies halfway between its two ways, so each way is as far from it as the other: for chest 940 and E = 75, along the
 * top 743 − 413/2 − 135.5895 = 400.9105, under the arm 432 + 25 − (199.5 + 21.9907 − 20.6111 − 184) = 440.1204, halfway 420.5154.
 */
describe('a sleeve along the top', () => {
  it('is as long as nape to cuff leaves, within 50', () => {
    expect(check(setIn(), 'along-the-top')).toMatchObject({
      comfort: true,
      need: expect.closeTo(19.605, 3),
      have: 50,
      margin: expect.closeTo(30.395, 3),
      verdict: 'fine',
    });
    expect(check(setIn(), 'under-the-arm').need).toBeCloseTo(19.605, 3);
  });

  /** 743 + 157 = 900: 557.9105 along the top, 58.8951 from halfway. */
  it('is poor beyond that, and no collision', () => {
    const advice = setIn({ body: womanWith({ 'nape-to-cuff': 900 }) });
    expect(check(advice, 'along-the-top')).toMatchObject({ need: expect.closeTo(58.8951, 3), verdict: 'poor' });
    expect(check(advice, 'under-the-arm').verdict).toBe('poor');
    expect(advice.collisions).toEqual([]);
  });

  it('differs by nothing where there is no other way', () => {
    const advice = setIn({ body: womanWith({ 'underarm-length': undefined }) });
    expect(check(advice, 'along-the-top').need).toBeCloseTo(0, 9);
    expect(check(advice, 'under-the-arm')).toMatchObject({ verdict: 'unknown', needs: ['underarm-length'] });
  });

  it('is of no sleeve that is sewn to a straight edge', () => {
    for (const construction of ['drop-shoulder', 'squared-drop'] as const)
      expect(check(adviceOn({ design: { construction } }), 'along-the-top').verdict).toBe('n/a');
  });
});
