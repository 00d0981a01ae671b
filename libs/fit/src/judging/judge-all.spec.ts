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
  made,
  WOMAN,
  womanWith,
} from '../../../../tests/support/fit-samples.ts';
import { advise } from '../advice/advise.ts';

/** A fabric that was pulled and gives nothing: σ = 20 at the chest and at the hip. */
const UNYIELDING = fabricOf(3, { stretch: { across: 0, along: 0 } });
const exact = bodyOf(WOMAN, 'woman', Object.fromEntries(Object.keys(WOMAN).map((name) => [name, 0])));

describe('the uncertainty of a check', () => {
  /**
   * In a fabric that gives nothing F = 940 + 75 + 20 and the room is 1035 − 12 = 1023, whatever the chest is: the sheet is made. The need, 940 +
   * (1200 − 940)/4 = 1005, has three quarters of the chest's uncertainty and one of the shoulders'; the room four times that of t; and the making 1 %
   * of 1023.
   */
  it('has the body’s in the need, the fabric’s in the room, and adds the making to a girth', () => {
    const body = bodyOf({ ...WOMAN, 'shoulder-girth': 1200 }, 'woman', { 'chest-girth': 15, 'shoulder-girth': 20 });
    const over = check(adviceOn({ body, fabric: UNYIELDING }), 'over-the-shoulders');
    const u = Math.hypot(11.25, 5, 1.2, 10.23);
    expect(over.margin).toBeCloseTo(18, 9);
    expect(over.u).toBeCloseTo(u, 6);
    expect(over.chanceOfFailing).toBeCloseTo(normalCdf(-18 / u), 6);
    expect(over.verdict).toBe('tight');
  });

  /** Both lean on one cause with r = 0.5: to ¾ chest + ¼ shoulders the covariance adds 2 × ¾ × ¼ × 0.5 × 15 × 20. The room is 1003 × 1.1. */
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
    expect(over.u).toBeCloseTo(
      Math.sqrt(0.5625 * 225 + 0.0625 * 400 + 0.375 * 150 + (4.4 * 0.3) ** 2 + 11.033 ** 2),
      6,
    );
  });

  /** The body's underarm lies 270 + 371/18 − 224.5 = 66.1 above the hem, of a rib of 50 and 20; nothing about it is uncertain, and it is no girth. */
  it('may be nothing: then it fails for certain, or not at all', () => {
    const fabric = fabricOf(3, { thicknessU: 0 });
    const short = { body: exact, fabric, design: { length: 'custom', customLengthMm: 270, ribMm: 50 } } as const;
    expect(check(adviceOn(short), 'body-below-underarm')).toMatchObject({ u: 0, chanceOfFailing: 1, verdict: 'fails' });
    const long = { ...short, design: { ...short.design, customLengthMm: 274 } };
    expect(check(adviceOn(long), 'body-below-underarm')).toMatchObject({ u: 0, chanceOfFailing: 0, verdict: 'fine' });
  });
});

/** A body that is made 50.07 up to its underarm, with a rib of 30.07 and the 20 below it: 7e-15 is lacking as it is worked out. */
const capped = {
  made: [made('back/body-to-underarm', 50.07)],
  design: { ribMm: 30.07 },
} as const;

describe('a margin that is only rounding', () => {
  it('is none: the check holds, and nothing is to change', () => {
    const below = check(adviceOn(capped), 'body-below-underarm');
    expect(below.have! - below.need!).toBeLessThan(0);
    expect(below).toMatchObject({ verdict: 'fine', margin: 0 });
    expect(adviceOn(capped).collisions.map(({ dimension }) => dimension)).not.toContain('body-to-underarm');
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
    const verdicts = [1300, 1240, 900].map(
      (girth) =>
        check(adviceOn({ body: womanWith({ 'shoulder-girth': girth }), fabric: UNYIELDING }), 'over-the-shoulders')
          .verdict,
    );
    // need 940 + (girth − 940)/4: 1030, 1015 and 940 of 1023, u about 10.
    expect(verdicts).toEqual(['fails', 'tight', 'fine']);
  });

  /** A V of 250, 245 and 200 before a bust line at 184 + 50 + 371/18 = 254.6, whose u of the scye depth is 10: Φ(−0.46) = 0.32, Φ(−0.96) = 0.17. */
  it('on comfort is poor below nothing to spare, and tight above one chance in four', () => {
    const body = bodyOf(WOMAN, 'woman', { 'scye-depth': 10 });
    const verdicts = [260, 250, 245].map(
      (frontNeckDepthMm) =>
        check(adviceOn({ body, design: { neckline: 'v', frontNeckDepthMm } }), 'neck-depth').verdict,
    );
    expect(verdicts).toEqual(['poor', 'tight', 'fine']);
  });

  /** What is usual for the craft is taken where the stretch of the main fabric was not measured, 0.1, and said. */
  it('is known without a measured stretch', () => {
    const { checks } = adviceOn();
    for (const name of ['over-the-shoulders', 'hip'] as const) {
      const { verdict, params } = checks.find((each) => each.check === name)!;
      expect(verdict).toBe('fine');
      expect(params).toMatchObject({ finding: 'holds', usualStretch: 'knit' });
    }
    const measured = adviceOn({ fabric: fabricOf(3, { stretch: { across: 0.2, along: 0.2 } }) });
    expect(check(measured, 'hip').params).toMatchObject({ usualStretch: null });
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
          const most = each.comfort ? 0.25 : 0.05;
          if (verdict === 'fine' || verdict === 'tight') {
            expect(margin, each.check).toBeGreaterThanOrEqual(0);
            expect(chanceOfFailing! <= most, each.check).toBe(verdict === 'fine');
          } else {
            expect(verdict, each.check).toBe(each.comfort ? 'poor' : 'fails');
            expect(margin, each.check).toBeLessThan(0);
          }
        }
      }),
      { numRuns: 120 },
    );
  });
});
