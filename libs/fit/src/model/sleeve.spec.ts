import { describe, expect, it } from 'vitest';
import type { BodyDimension } from '#body';
import {
  adviceOn,
  bodyOf,
  dimension,
  fabricOf,
  garmentOf,
  made,
  mm,
  WOMAN,
  womanWith,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';

/** Half of a set-in's edge on the body: what is bound off, a slope, the straight rest; and the cap whose own half is as long. */
const armholeSeam = (armhole: number, inset: number, bindOff: number): number => {
  const rise = Math.min(0.4 * armhole, 80);
  return bindOff + Math.hypot(inset - bindOff, rise) + armhole - rise;
};
const capForSeam = (seam: number, top: number, bindOff: number): number => {
  const flat = (0.22 * top) / 2;
  const slope = seam - bindOff - flat;
  return Math.sqrt(slope ** 2 - (top / 2 - bindOff - flat) ** 2);
};

const FOLD = 4 - Math.PI;
/** The plain request's panel: (1015 − (4 − π)3)/2. */
const PANEL = (1015 - FOLD * 3) / 2;
/** Its neck on the piece. */
const NECK = 371 / Math.PI + 75;

describe('a drop shoulder’s sleeve', () => {
  it('is twice the armhole at its top: a seam, which converts to nothing', () => {
    const advice = adviceOn({ fabric: fabricOf(8) });
    expect(mm(advice, 'sleeve/sleeve-top-width')).toBeCloseTo(2 * mm(advice, 'armhole-depth'), 9);
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo(mm(advice, 'armhole-depth'), 9);
  });

  /** 743 − p/2; all of it under the arm. */
  it('is what nape to cuff leaves beyond half the body', () => {
    const advice = adviceOn();
    expect(mm(advice, 'sleeve-length')).toBeCloseTo(743 - PANEL / 2, 9);
    expect(mm(advice, 'underarm-seam')).toBe(mm(advice, 'sleeve-length'));
  });
});

describe('a squared drop’s sleeve', () => {
  /** The inset of (p − 404)/4 goes into the body's corner. */
  it('lies by its inset inside the body', () => {
    const advice = adviceOn({ design: { construction: 'squared-drop' } });
    expect(mm(advice, 'sleeve-length') - mm(advice, 'underarm-seam')).toBeCloseTo((PANEL - 404) / 4, 9);
  });
});

describe('a set-in sleeve', () => {
  const design = { construction: 'set-in' } as const;

  /** F = 280 + 0.5 × 75 = 317.5; the piece G = F − (4 − π)3. */
  it('is a girth at its top', () => {
    const advice = adviceOn({ design });
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo(317.5 / 2, 9);
    expect(mm(advice, 'sleeve/sleeve-top-width')).toBeCloseTo(317.5 - FOLD * 3, 9);
  });

  /**
   * A = 199.5. The rest lies halfway between what nape to cuff leaves, 743 − 413/2 − H, and the arm's own: its 432 and 25 less what the garment's
   * underarm lies below the scye's, A + f − d_b − 184.
   */
  it('has a cap whose edge is the armhole’s, and under the arm what lies between its two ways', () => {
    const advice = adviceOn({ design });
    const top = 317.5 - FOLD * 3;
    const inset = (PANEL - 413) / 2;
    const bindOff = Math.min(inset / 2, (0.35 * top) / 2);
    const cap = capForSeam(armholeSeam(199.5, inset, bindOff), top, bindOff);
    expect(mm(advice, 'sleeve/cap-height')).toBeCloseTo(cap, 9);
    const fall = (0.2 * (413 - NECK)) / 2;
    const underArm = 432 + 25 - (199.5 + fall - 371 / 18 - 184);
    expect(mm(advice, 'underarm-seam')).toBeCloseTo((743 - 413 / 2 - cap + underArm) / 2, 9);
    expect(mm(advice, 'sleeve-length')).toBeCloseTo(mm(advice, 'underarm-seam') + cap, 9);
    expect(mm(advice, 'neck-to-cuff')).toBeCloseTo(mm(advice, 'sleeve-length') + 413 / 2, 9);
  });

  /** 700 + 37.5 − (4 − π)3 round: no cap fits an armhole of 199.5; b = i/2 is less than 0.35 of half of it. */
  it('makes the armhole deep enough for a cap of half its depth', () => {
    const advice = adviceOn({ body: womanWith({ 'upper-arm-girth': 700 }), design });
    const [depth, top, inset] = [mm(advice, 'armhole-depth'), 737.5 - FOLD * 3, (PANEL - 413) / 2];
    const cap = capForSeam(armholeSeam(depth, inset, inset / 2), top, inset / 2);
    expect(depth).toBeGreaterThan(199.5);
    expect(cap).toBeCloseTo(depth / 2, 6);
    expect(mm(advice, 'sleeve/cap-height')).toBeCloseTo(cap, 6);
  });

  it('has none where it is too wide for an armhole that is made, and the sheet says so', () => {
    const made199 = [made('back/armhole-depth', 199.5)];
    const advice = adviceOn({ body: womanWith({ 'upper-arm-girth': 700 }), design, made: made199 });
    expect(dimension(advice, 'sleeve-length').noAdvice).toEqual({
      code: 'no-sleeve',
      params: { cure: 'narrower-sleeve-or-deeper-armhole-again' },
      needs: [],
    });
    expect(dimension(advice, 'sleeve/cap-height').value).toBeNull();
    expect(advice.pieces.find(({ piece }) => piece === 'sleeve')).not.toHaveProperty('outline');
    expect(advice.notes.map(({ code }) => code)).toContain('no-sleeve');
    // The body has its advice all the same.
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(199.5, 9);
  });

  it('made before its body, gives the armhole its depth', () => {
    const planned = adviceOn({ design });
    const parts = ['sleeve/cap-height', 'sleeve/sleeve-top-width'].map((path) => made(path, mm(planned, path)));
    // Back and front 20 wider bring the edges further in; the same cap then asks for a shallower armhole.
    const wider = made('back/width', mm(planned, 'back/width') + 20);
    const after = adviceOn({ design, made: [wider, ...parts] });
    expect(mm(after, 'armhole-depth')).toBeLessThan(mm(planned, 'armhole-depth'));
    const edge = (advice: typeof after, piece: string, name: string) =>
      advice.pieces.find((one) => one.piece === piece)!.edges.find((each) => each.edge === name)!.length;
    expect(edge(after, 'back', 'left-armhole')).toBeCloseTo(edge(after, 'sleeve', 'back-armhole'), 9);
  });
});

describe('the cuff', () => {
  /** F = 160 + 10 + 0.15 × 75 = 181.25; the piece loses (4 − π)3, the room inside is F − 12. */
  it('is a girth', () => {
    const advice = adviceOn();
    expect(mm(advice, 'cuff-width')).toBeCloseTo(181.25 / 2, 9);
    expect(mm(advice, 'sleeve/cuff-width')).toBeCloseTo(181.25 - FOLD * 3, 9);
    expect(advice.checks.find(({ check }) => check === 'cuff-stays')?.need).toBeCloseTo(169.25, 9);
  });

  it('is never wider than the sleeve’s top', () => {
    const advice = adviceOn({
      body: womanWith({ 'upper-arm-girth': 170, 'wrist-girth': 240 }),
      design: { construction: 'set-in' },
    });
    expect(mm(advice, 'sleeve/cuff-width')).toBeCloseTo(mm(advice, 'sleeve/sleeve-top-width'), 9);
  });

  /** Inside 1.02 × 1.12 × 190 = 217.056, through a rib that gives nothing; as a girth of the piece 3π more. The wrist asks for 178.7. */
  it('passes the hand by a margin', () => {
    const advice = adviceOn({ fabric: fabricOf(3, { ribStretch: 0 }) });
    expect(mm(advice, 'sleeve/cuff-width')).toBeCloseTo(217.056 + 3 * Math.PI, 9);
    expect(mm(advice, 'cuff-width')).toBeCloseTo((217.056 + 12) / 2, 9);
  });

  /** u 5 of the hand: 212.8 + 1.75 √(5.6² + 2.128²). */
  it('passes a hand that is less sure by more', () => {
    const body = bodyOf(WOMAN, 'woman', { 'hand-girth': 5 });
    const advice = adviceOn({ body, fabric: fabricOf(3, { ribStretch: 0 }) });
    const need = 212.8 + 1.75 * Math.hypot(5.6, 2.128);
    expect(mm(advice, 'sleeve/cuff-width')).toBeCloseTo(need + 3 * Math.PI, 9);
  });

  it('of the maker’s own is left alone, and one kept from a garment passes the hand too', () => {
    const fabric = fabricOf(3, { ribStretch: 0 });
    expect(mm(adviceOn({ fabric, design: { cuffWidthMm: 80 } }), 'cuff-width')).toBeCloseTo(80, 9);
    const garment = garmentOf({ 'chest-width': 520, 'cuff-width': 90 });
    const advice = adviceOn({ fabric, garment, design: { basis: 'both' } });
    expect(mm(advice, 'cuff-width')).toBeCloseTo((217.056 + 12) / 2, 9);
  });

  it('as made is taken as it is', () => {
    expect(mm(adviceOn({ made: [made('sleeve/cuff-width', 205)] }), 'sleeve/cuff-width')).toBe(205);
  });
});

/** A rib draws in by a fifth on the same stitches: 178.7/0.8 = 223.3; crocheted it does not. */
describe('the width above the rib', () => {
  const cuff = 181.25 - FOLD * 3;

  it('is the cuff’s over 0.8 where it is knitted, and the cuff’s where it is crocheted', () => {
    expect(mm(adviceOn(), 'sleeve/above-rib-width')).toBeCloseTo(cuff / 0.8, 9);
    expect(
      mm(adviceOn({ fabric: fabricOf(3, { craft: 'crochet', ribStretch: 1 }) }), 'sleeve/above-rib-width'),
    ).toBeCloseTo(cuff, 9);
  });

  /** An arm of 160 in a set-in: G = 160 + 37.5 − (4 − π)3 = 194.9 < 223.3. */
  it('is the top’s at most', () => {
    const advice = adviceOn({ body: womanWith({ 'upper-arm-girth': 160 }), design: { construction: 'set-in' } });
    expect(mm(advice, 'sleeve/above-rib-width')).toBeCloseTo(197.5 - FOLD * 3, 9);
  });
});

describe('the way from nape to cuff', () => {
  it.each(['drop-shoulder', 'squared-drop'] as const)('is kept by a %s', (construction) => {
    expect(mm(adviceOn({ design: { construction } }), 'neck-to-cuff')).toBeCloseTo(743, 9);
  });

  /**
   * A raglan's sleeve begins at the neck's edge on the piece, 371/π + 75 wide: along the top 743 − w_p/2 − D_S. Under the arm 432 + 25 − (229.5 − 184)
   * = 411.5. Body: run (p − 0.9w_p)/2 − 0.05p, rise 229.5 − 25; sleeve: run G/2 − w_p/6 − 0.05p, and the rise that makes its edge as long.
   */
  it('of a raglan begins at the neck, and lies between its two ways', () => {
    const advice = adviceOn({ design: { construction: 'raglan' } });
    const [top, bindOff] = [317.5 - FOLD * 3, 0.05 * PANEL];
    const run = (PANEL - 0.9 * NECK) / 2 - bindOff;
    const sleeveRun = top / 2 - Math.min(NECK / 6, top / 8) - bindOff;
    const rise = Math.sqrt(run ** 2 + 204.5 ** 2 - sleeveRun ** 2);
    expect(mm(advice, 'sleeve/sleeve-raglan-depth')).toBeCloseTo(rise, 9);
    expect(mm(advice, 'underarm-seam')).toBeCloseTo((743 - NECK / 2 - rise + 411.5) / 2, 9);
    expect(mm(advice, 'sleeve-length')).toBeCloseTo(mm(advice, 'underarm-seam') + rise, 9);
    expect(mm(advice, 'neck-to-cuff')).toBeCloseTo(mm(advice, 'sleeve-length') + NECK / 2, 9);
  });

  /** ¾ of the way under the arm where it alone was measured, ¼ where the other was; all of the other in a sweater's sleeve, or without it. */
  it('counts as far as it was measured', () => {
    const sleeve = (estimated: BodyDimension | null, without?: BodyDimension, differs: Differs = {}): number => {
      const body = womanWith(without ? { [without]: undefined } : {});
      const values = Object.fromEntries(
        Object.entries(body.values).map(([name, value]) => [
          name,
          name === estimated ? { ...value, how: 'estimated' as const } : value,
        ]),
      );
      const advice = adviceOn({ body: { ...body, values }, design: { construction: 'set-in' }, ...differs });
      return mm(advice, 'underarm-seam');
    };
    const both = sleeve(null);
    const alongTop = sleeve(null, 'underarm-length');
    const underArm = sleeve(null, 'nape-to-cuff');
    expect(both).toBeCloseTo((alongTop + underArm) / 2, 9);
    expect(sleeve('nape-to-cuff')).toBeCloseTo(alongTop / 4 + (3 * underArm) / 4, 9);
    expect(sleeve('underarm-length')).toBeCloseTo((3 * alongTop) / 4 + underArm / 4, 9);
    const garment = garmentOf(
      { 'chest-width': 507.5, 'sleeve-length': 743 },
      { construction: 'set-in', sleeveFrom: 'centre-back' },
    );
    const design = { construction: 'set-in', basis: 'both' } as const;
    expect(sleeve(null, undefined, { garment, design })).toBeCloseTo(alongTop, 9);
  });

  it('is as far as a sleeve that is made reaches', () => {
    expect(mm(adviceOn({ made: [made('sleeve/sleeve-length', 500)] }), 'neck-to-cuff')).toBeCloseTo(500 + PANEL / 2, 9);
  });
});

describe('a vest', () => {
  it('has no sleeve', () => {
    const { assembled, pieces } = adviceOn({ design: { silhouette: 'vest' } });
    expect(pieces.map(({ piece }) => piece)).toEqual(['back', 'front', 'neck-band', 'armhole-band']);
    expect(assembled.filter(({ name }) => /sleeve|cuff|underarm-seam/.test(name))).toEqual([]);
  });
});
