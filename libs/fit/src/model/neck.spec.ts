import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adviceOn,
  bodyOf,
  check,
  fabricOf,
  mm,
  WOMAN,
  womanWith,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';

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

  /** 0.9 × (184 + 8) = 172.8. */
  it('V: as wide as a crew, 0.9 of the armhole’s base deep', () => {
    expect(neck({ design: { neckline: 'v' } })).toEqual([CREW, 172.8, 371 / 18].map((x) => expect.closeTo(x, 9)));
  });

  /** Scoops and boats of a back of 300 leave 60 for its shoulders: 300 − 2 × 25 − 60 = 190 < 193.1; a boat of 300 − 130 = 170. */
  it('leaves the shoulders 60, but is never narrower than a crew', () => {
    const body = womanWith({ 'across-back': 300 });
    const width = (neckline: 'scoop' | 'boat', across = 300) =>
      mm(adviceOn({ fabric: EASY, body: womanWith({ 'across-back': across }), design: { neckline } }), 'neck-width');
    expect(width('scoop')).toBeCloseTo(190, 9);
    expect(width('boat')).toBeCloseTo(170, 9);
    expect(width('scoop', 220)).toBeCloseTo(CREW, 9);
    expect(width('boat', 220)).toBeCloseTo(CREW, 9);
    expect(mm(adviceOn({ fabric: EASY, body }), 'neck-width')).toBeCloseTo(CREW, 9);
  });

  /** Across back 404 − 130, 25 deep before and behind. */
  it('boat: all of the back but 130', () => {
    expect(neck({ design: { neckline: 'boat' } })).toEqual([274, 25, 25].map((x) => expect.closeTo(x, 9)));
  });

  /** Their 1.5 × 283 do not reach 640: the neck opens. */
  it('a maker’s own numbers are left alone, whatever the head', () => {
    const own = { neckWidthMm: 120, frontNeckDepthMm: 40, backNeckDepthMm: 10 };
    const advice = adviceOn({ design: own, body: womanWith({ 'head-girth': 640 }) });
    expect(['neck-width', 'front-neck-depth', 'back-neck-depth'].map((name) => mm(advice, name))).toEqual([
      120, 40, 10,
    ]);
    expect(check(advice, 'head-through-neck').verdict).toBe('fine');
    expect(advice.design.opening.at).toBe('shoulder');
  });
});

describe('the opening', () => {
  it('is two half ellipses', () => {
    const expected = halfEllipse(CREW, 371 / 5) + halfEllipse(CREW, 371 / 18);
    expect(mm(adviceOn({ fabric: EASY }), 'neck-opening')).toBeCloseTo(expected, 9);
  });

  it('of a V is two straight sides and the back’s half ellipse', () => {
    const expected = 2 * Math.hypot(CREW / 2, 172.8) + halfEllipse(CREW, 371 / 18);
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
    expect(mm(advice, 'left-front/front-neck-depth')).toBeCloseTo(172.8, 9);
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

  /** r(head) with u = 10: 600 + 1.75 √(10² + 6²) = 620.4 > 612. */
  it('leaves more to spare for a head that is less sure', () => {
    const body = bodyOf({ ...WOMAN, 'head-girth': 600 }, 'woman', { 'head-girth': 10 });
    const { have } = check(adviceOn({ body }), 'head-through-neck') as { have: number };
    expect(have).toBeCloseTo(600 + 1.75 * Math.sqrt(136), 6);
  });

  /**
   * Half more at most: 720 in a rib that does not stretch needs 734.4, and even an opening of 1.5 × 320 is far from it. So the neck is 1.2
   * times its start, and opens for the rest.
   */
  it('ends at half more, and is a fifth where that does not do: then it opens', () => {
    const body = womanWith({ 'head-girth': 720, 'neck-base-girth': 300 });
    const advice = adviceOn({ body, fabric: fabricOf(3, { ribStretch: 0 }) });
    const [width, front, back] = [1.2 * (300 / Math.PI + 25), (1.2 * 300) / 5, (1.2 * 300) / 18];
    expect(mm(advice, 'neck-width')).toBeCloseTo(width, 9);
    expect(mm(advice, 'front-neck-depth')).toBeCloseTo(front, 9);
    const opening = halfEllipse(width, front) + halfEllipse(width, back);
    // 175.4 at one shoulder of (506.2 − 194.6)/2 = 155.8 is too long: half of it at each.
    expect(advice.design.opening.at).toBe('shoulders');
    expect(mm(advice, 'opening-length')).toBeCloseTo((734.4 - opening) / 4, 6);
    expect(check(advice, 'head-through-neck')).toMatchObject({ verdict: 'fine', have: expect.closeTo(734.4, 6) });
  });

  /** A child's κ = 635/920: λ up to 1 + κ/2 = 1.345, in a rib that gives 0.2. Its head of 470 asks for 1.29. */
  it('of a child ends sooner', () => {
    const child = (head: number) =>
      adviceOn({
        body: bodyOf({ ...WOMAN, 'chest-girth': 635, 'neck-base-girth': 291, 'head-girth': head }, 'child'),
        fabric: fabricOf(3, { ribStretch: 0.4 }),
      });
    const start = 291 / 5;
    const most = 1 + 635 / 920 / 2;
    const widened = (head: number): number => mm(child(head), 'front-neck-depth') / start;
    expect(widened(470)).toBeGreaterThan(1.2);
    expect(widened(470)).toBeLessThan(most);
    expect(widened(520)).toBeCloseTo(1.2, 9);
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

  /** Across back 300: w + 2 × 25 ≤ 0.65 × 300, so w ≤ 145, though the head of 700 would take 1.2 × 143.1. The depths go on. */
  it('ends in width where the neck takes 0.65 of the back', () => {
    const body = womanWith({ 'head-girth': 700, 'across-back': 300 });
    const advice = adviceOn({ body, fabric: fabricOf(3, { ribStretch: 0 }) });
    expect(mm(advice, 'neck-width')).toBeCloseTo(145, 9);
    expect(mm(advice, 'front-neck-depth')).toBeCloseTo((1.2 * 371) / 5, 9);
  });

  /** A vest of across back 380 has two armhole bands there as well: 0.65(380 − 50) − 50 = 164.5 < 1.2 × 143.1; of 340: 138.5 < 143.1. */
  it('of a vest leaves out its armhole bands, and makes no neck narrower', () => {
    const width = (across: number): number => {
      const body = womanWith({ 'head-girth': 760, 'across-back': across });
      const design = { silhouette: 'vest', construction: 'set-in', bandMm: 25 } as const;
      return mm(adviceOn({ body, design, fabric: fabricOf(3, { ribStretch: 0 }) }), 'neck-width');
    };
    expect(width(380)).toBeCloseTo(164.5, 9);
    expect(width(340)).toBeCloseTo(CREW, 9);
  });
});
