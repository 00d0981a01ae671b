import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalCdf } from '#measure';
import { fitRequest } from '../../../../tests/support/fit-requests.ts';
import {
  adviceOn,
  bodyOf,
  check,
  everyDimension,
  fabricOf,
  WOMAN,
  womanWith,
} from '../../../../tests/support/fit-samples.ts';
import { advise } from '../advice/advise.ts';

const exact = bodyOf(WOMAN, 'woman', Object.fromEntries(Object.keys(WOMAN).map((name) => [name, 0])));

describe('the uncertainty of a check', () => {
  /**
   * Margin: (chest + 75 − 12) − (chest + shoulders)/2. The chest is in both: half of it is left. The thickness drops out of
   * the room. The making is 1 % of the girth of 1003.
   */
  it('takes need and have together, and adds the making to a girth', () => {
    const body = bodyOf(WOMAN, 'woman', { 'chest-girth': 15, 'shoulder-girth': 20 });
    const over = check(adviceOn({ body }), 'over-the-shoulders');
    const u = Math.hypot(7.5, 10, 10.03);
    expect(over.margin).toBeCloseTo(3, 9);
    expect(over.u).toBeCloseTo(u, 6);
    expect(over.chanceOfFailing).toBeCloseTo(normalCdf(-3 / u), 6);
    expect(over.verdict).toBe('tight');
  });

  /** Both lean on one cause with r = 0.5: 0.5 × chest − 0.5 × shoulders, so the covariance takes off 2 × 0.25 × 0.5 × 15 × 20. */
  it('takes in what two estimates share', () => {
    const body = bodyOf(WOMAN, 'woman', { 'chest-girth': 15, 'shoulder-girth': 20 });
    const names = ['chest-girth', 'shoulder-girth'] as const;
    const covariance = {
      names,
      matrix: [
        [225, 150],
        [150, 400],
      ],
    };
    const over = check(adviceOn({ body: { ...body, covariance } }), 'over-the-shoulders');
    expect(over.u).toBeCloseTo(Math.sqrt(0.25 * (225 + 400 - 2 * 150) + 10.03 ** 2), 6);
  });

  /** The body's underarm lies 58.1 above the hem, of 70; nothing about it is uncertain, and it is no girth. */
  it('may be nothing: then it fails for certain, or not at all', () => {
    const fabric = fabricOf(3, { thicknessU: 0 });
    const short = { body: exact, fabric, design: { length: 'custom', customLengthMm: 280 } } as const;
    expect(check(adviceOn(short), 'body-below-underarm')).toMatchObject({ u: 0, chanceOfFailing: 1, verdict: 'fails' });
    const long = { ...short, design: { ...short.design, customLengthMm: 292 } };
    expect(check(adviceOn(long), 'body-below-underarm')).toMatchObject({ u: 0, chanceOfFailing: 0, verdict: 'fine' });
  });
});

/** The neck is widened to the most that the shoulders leave, so that nothing is to spare: −4e-15 as it is worked out. */
const capped = {
  body: bodyOf(
    {
      'chest-girth': 539.8,
      'across-back': 245.4,
      'scye-depth': 110.6,
      'neck-base-girth': 233.1,
      'head-girth': 445.6,
      'back-waist-length': 246.8,
      'nape-to-cuff': 406.2,
      'upper-arm-girth': 161.4,
    },
    'baby',
  ),
  fabric: fabricOf(2.04, { craft: 'crochet' }),
  design: {
    construction: 'squared-drop',
    length: 'long',
    neckline: 'boat',
    ease: { category: 'very-close', place: 0.53 },
    bandMm: null,
  },
} as const;

describe('a margin that is only rounding', () => {
  it('is none: the check holds, and nothing is to change', () => {
    const neck = check(adviceOn(capped), 'neck-on-shoulders');
    expect(neck).toMatchObject({ verdict: 'fine', margin: 0 });
    expect(adviceOn(capped).collisions.map(({ dimension }) => dimension)).not.toContain('neck-width');
  });

  it('leaves the numbers between their low and high', () => {
    for (const [, one] of everyDimension(adviceOn(capped))) {
      if (one.value === null || one.low === undefined || one.high === undefined) continue;
      expect(one.low).toBeLessThanOrEqual(one.value);
      expect(one.high).toBeGreaterThanOrEqual(one.value);
    }
  });
});

describe('the verdict', () => {
  it('fails below nothing to spare, is tight above one chance in twenty, else fine', () => {
    const verdicts = [1100, 1060, 900].map(
      (girth) =>
        check(
          adviceOn({
            body: womanWith({ 'shoulder-girth': girth }),
            fabric: fabricOf(3, { stretch: { across: 0, along: 0 } }),
          }),
          'over-the-shoulders',
        ).verdict,
    );
    // need (940 + girth)/2: 1020, 1000 and 940 of 1003, u about 10.
    expect(verdicts).toEqual(['fails', 'tight', 'fine']);
  });

  it('is unknown where only an unmeasured stretch could make it hold', () => {
    const over = check(adviceOn({ body: womanWith({ 'shoulder-girth': 1100 }) }), 'over-the-shoulders');
    expect(over).toMatchObject({ verdict: 'unknown', need: 1020, margin: expect.closeTo(-17, 9) });
  });

  it('is unknown where a measure is missing, and names it', () => {
    const { verdict, needs, params, need } = check(
      adviceOn({ body: womanWith({ 'hand-girth': undefined }) }),
      'cuff-stays',
    );
    expect({ verdict, needs, need }).toEqual({ verdict: 'unknown', needs: ['hand-girth'], need: undefined });
    expect(params).toEqual({ finding: 'not-known', needs, lack: null });
  });

  it('follows from margin and chance, whatever is asked', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        for (const each of advise(request).checks) {
          const { verdict, need, have, margin, u, chanceOfFailing } = each;
          if (verdict === 'n/a') expect(need).toBeUndefined();
          if (need === undefined || have === undefined) continue;
          expect(margin).toBeCloseTo(have - need, 9);
          expect(u).toBeGreaterThanOrEqual(0);
          expect(chanceOfFailing).toBeGreaterThanOrEqual(0);
          expect(chanceOfFailing).toBeLessThanOrEqual(1);
          // Half a chance at nothing to spare, less the more there is.
          if (u! > 0 && margin! !== 0) expect(chanceOfFailing! > 0.5).toBe(margin! < 0);
          if (verdict === 'fine') expect(margin! >= 0 && chanceOfFailing! <= 0.05, each.check).toBe(true);
          if (verdict === 'fails') expect(margin, each.check).toBeLessThan(0);
        }
      }),
      { numRuns: 120 },
    );
  });
});
