import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviceOn, check, fabricOf, mm, womanWith, type Differs } from '../../../../tests/support/fit-samples.ts';

/** Half of an ellipse's circumference by Ramanujan's first approximation. */
const halfEllipse = (width: number, depth: number): number => {
  const a = width / 2;
  return (Math.PI / 2) * (3 * (a + depth) - Math.sqrt((3 * a + depth) * (a + 3 * depth)));
};

/** Stretch of the rib so great that no head widens the neck: usable is half of it. */
const EASY = fabricOf(3, { ribStretch: 4 });
const neck = (differs: Differs) => {
  const advice = adviceOn({ fabric: EASY, ...differs });
  return ['neck-width', 'front-neck-depth', 'back-neck-depth'].map((name) => mm(advice, name));
};
/** 371/π + 25. */
const CREW = 371 / Math.PI + 25;

describe('the finished neck', () => {
  it('crew: NB/π + 25 wide, NB/5 and NB/18 deep', () => {
    expect(neck({})).toEqual([CREW, 371 / 5, 371 / 18].map((x) => expect.closeTo(x, 9)));
  });

  it('scoop: 50 wider and 70 deeper in front', () => {
    const expected = [CREW + 50, 371 / 5 + 70, 371 / 18];
    expect(neck({ design: { neckline: 'scoop' } })).toEqual(expected.map((x) => expect.closeTo(x, 9)));
  });

  /** 0.9 × (184 + 13). */
  it('V: as wide as a crew, 0.9 of the armhole’s base deep', () => {
    expect(neck({ design: { neckline: 'v' } })).toEqual([CREW, 177.3, 371 / 18].map((x) => expect.closeTo(x, 9)));
  });

  /** Across back 404 − 130, 25 deep before and behind. */
  it('boat: all of the back but 130', () => {
    expect(neck({ design: { neckline: 'boat' } })).toEqual([274, 25, 25].map((x) => expect.closeTo(x, 9)));
  });

  it('a maker’s own numbers are left alone, whatever the head', () => {
    const own = { neckWidthMm: 120, frontNeckDepthMm: 40, backNeckDepthMm: 10 };
    const advice = adviceOn({ design: own, body: womanWith({ 'head-girth': 640 }) });
    expect(['neck-width', 'front-neck-depth', 'back-neck-depth'].map((name) => mm(advice, name))).toEqual([
      120, 40, 10,
    ]);
    expect(check(advice, 'head-through-neck').verdict).toBe('fails');
    expect(advice.notes.map(({ code }) => code)).toContain('shoulder-opening');
  });
});

describe('the opening', () => {
  it('is two half ellipses', () => {
    const expected = halfEllipse(CREW, 371 / 5) + halfEllipse(CREW, 371 / 18);
    expect(mm(adviceOn({ fabric: EASY }), 'neck-opening')).toBeCloseTo(expected, 9);
  });

  it('of a V is two straight sides and the back’s half ellipse', () => {
    const expected = 2 * Math.hypot(CREW / 2, 177.3) + halfEllipse(CREW, 371 / 18);
    expect(mm(adviceOn({ fabric: EASY, design: { neckline: 'v' } }), 'neck-opening')).toBeCloseTo(expected, 9);
  });
});

describe('the piece under the band', () => {
  it('is wider by two bands and deeper by one', () => {
    const advice = adviceOn({ fabric: EASY });
    expect(mm(advice, 'back/neck-width')).toBeCloseTo(CREW + 50, 9);
    expect(mm(advice, 'front/front-neck-depth')).toBeCloseTo(371 / 5 + 25, 9);
    expect(mm(advice, 'back/back-neck-depth')).toBeCloseTo(371 / 18 + 25, 9);
    const edge = halfEllipse(CREW + 50, 371 / 5 + 25) + halfEllipse(CREW + 50, 371 / 18 + 25);
    expect(mm(advice, 'neck-band/neck-edge')).toBeCloseTo(edge, 9);
  });

  /**
   * A band β deep lies between the finished V's edge and the piece's, parallel to it. By the distance of the finished point
   * (0, −d_f) from the piece's edge, the line from (w_p/2, 0) to (0, −d_p): (d_p − d_f)(w_p/2)/√((w_p/2)² + d_p²) = β.
   */
  it('moves a V’s point so that the band is β deep all along', () => {
    const own = fc.record({
      width: fc.double({ min: 80, max: 250, noNaN: true }),
      depth: fc.double({ min: 80, max: 300, noNaN: true }),
      band: fc.double({ min: 5, max: 40, noNaN: true }),
    });
    fc.assert(
      fc.property(own, ({ width, depth, band }) => {
        const design = { neckline: 'v', neckWidthMm: width, frontNeckDepthMm: depth, bandMm: band } as const;
        const advice = adviceOn({ design });
        const half = width / 2 + band;
        const point = mm(advice, 'front/front-neck-depth');
        expect(((point - depth) * half) / Math.hypot(half, point)).toBeCloseTo(band, 6);
        expect(point).toBeGreaterThan(depth + band);
      }),
      { numRuns: 40 },
    );
  });

  it('leaves a cardigan’s V where it is: its bands go up the fronts', () => {
    const advice = adviceOn({ design: { silhouette: 'cardigan', neckline: 'v' } });
    expect(mm(advice, 'left-front/front-neck-depth')).toBeCloseTo(177.3, 9);
  });
});

describe('widening for the head', () => {
  /** The starting opening is about 385 and stretches by half: 577 ≥ 1.02 × 561. A head of 600 needs 612. */
  it('is none where the head passes with 2 % to spare', () => {
    expect(mm(adviceOn(), 'neck-width')).toBeCloseTo(CREW, 9);
  });

  it('is the least that lets the head pass with 2 % to spare, all three numbers alike', () => {
    const advice = adviceOn({ body: womanWith({ 'head-girth': 600 }) });
    expect(check(advice, 'head-through-neck').have).toBeCloseTo(1.02 * 600, 6);
    const scale = mm(advice, 'neck-width') / CREW;
    expect(scale).toBeGreaterThan(1);
    expect(mm(advice, 'front-neck-depth')).toBeCloseTo((scale * 371) / 5, 9);
    expect(mm(advice, 'back-neck-depth')).toBeCloseTo((scale * 371) / 18, 9);
    expect(advice.notes.find(({ code }) => code === 'neck-widened')?.params).toMatchObject({
      widthPercent: 6,
      frontPercent: 6,
      backPercent: 6,
    });
  });

  /** Twice at most: 720 in a rib that does not stretch needs 734.4; the opening at twice is 2 × 385. */
  it('ends at twice', () => {
    const body = womanWith({ 'head-girth': 720, 'neck-base-girth': 300 });
    const advice = adviceOn({ body, fabric: fabricOf(3, { ribStretch: 0 }) });
    expect(mm(advice, 'front-neck-depth')).toBeCloseTo((2 * 300) / 5, 9);
    expect(check(advice, 'head-through-neck').verdict).toBe('fails');
  });

  it('asks the edge too where the main fabric was stretched', () => {
    const body = womanWith({ 'head-girth': 600 });
    const stiff = fabricOf(3, { ribStretch: 4, stretch: { across: 0.1, along: 0.1 } });
    const advice = adviceOn({ body, fabric: stiff });
    expect(check(advice, 'head-through-neck').have).toBeCloseTo(mm(advice, 'neck-band/neck-edge') * 1.05, 6);
  });

  it('is none for a cardigan, which opens', () => {
    const advice = adviceOn({ body: womanWith({ 'head-girth': 700 }), design: { silhouette: 'cardigan' } });
    expect(mm(advice, 'neck-width')).toBeCloseTo(CREW, 9);
    expect(check(advice, 'head-through-neck').verdict).toBe('n/a');
  });

  /** 371/π + 25 = 143.1, the rule alone. */
  it('is left alone without a head: the check says that it is not known', () => {
    const advice = adviceOn({ body: womanWith({ 'head-girth': undefined }) });
    expect(mm(advice, 'neck-width')).toBeCloseTo(371 / Math.PI + 25, 9);
    const check = advice.checks.find((each) => each.check === 'head-through-neck');
    expect(check).toMatchObject({ verdict: 'unknown', needs: ['head-girth'] });
  });

  /** Across back 300: 300 − 2 × 25 − 60 = 190, though the head of 700 would take more. */
  it('keeps within what the shoulders carry', () => {
    const body = womanWith({ 'head-girth': 700, 'across-back': 300 });
    expect(mm(adviceOn({ body, fabric: fabricOf(3, { ribStretch: 0 }) }), 'neck-width')).toBeCloseTo(190, 9);
  });
});
