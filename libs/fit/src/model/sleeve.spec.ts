import { describe, expect, it } from 'vitest';
import { adviceOn, dimension, fabricOf, made, mm, womanWith } from '../../../../tests/support/fit-samples.ts';

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

  /** F = 280 + 0.35 × 75 = 306.25; the piece G = F − (4 − π)3. */
  it('is a girth at its top', () => {
    const advice = adviceOn({ design });
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo(306.25 / 2, 9);
    expect(mm(advice, 'sleeve/sleeve-top-width')).toBeCloseTo(306.25 - FOLD * 3, 9);
  });

  it('has a cap whose edge is the armhole’s, and the rest of it under the arm', () => {
    const advice = adviceOn({ design });
    const top = 306.25 - FOLD * 3;
    const inset = (PANEL - 413) / 2;
    const bindOff = Math.min(inset / 2, (0.35 * top) / 2);
    const cap = capForSeam(armholeSeam(204.5, inset, bindOff), top, bindOff);
    expect(mm(advice, 'sleeve/cap-height')).toBeCloseTo(cap, 9);
    expect(mm(advice, 'underarm-seam')).toBeCloseTo(743 - 413 / 2 - cap, 9);
  });

  it('has none where it is too wide for its armhole, and the sheet says so', () => {
    const advice = adviceOn({ body: womanWith({ 'upper-arm-girth': 700 }), design });
    expect(dimension(advice, 'sleeve-length').noAdvice).toEqual({
      code: 'no-sleeve',
      params: { cure: 'squared-drop' },
      needs: [],
    });
    expect(dimension(advice, 'sleeve/cap-height').value).toBeNull();
    expect(advice.pieces.find(({ piece }) => piece === 'sleeve')).not.toHaveProperty('outline');
    expect(advice.notes.map(({ code }) => code)).toContain('no-sleeve');
    // The body has its advice all the same.
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(204.5, 9);
  });

  it('made before its body, gives the armhole its depth', () => {
    const planned = adviceOn({ design });
    const parts = ['sleeve/cap-height', 'sleeve/sleeve-top-width'].map((path) => made(path, mm(planned, path)));
    // Back and front 20 wider bring the edges further in; the same cap then asks for a shallower armhole.
    const wider = made('back/width', mm(planned, 'back/width') + 20);
    const after = adviceOn({ design, made: [wider, ...parts] });
    expect(mm(after, 'armhole-depth')).toBeLessThan(mm(planned, 'armhole-depth'));
    const edge = (advice: typeof after, piece: string, name: string) =>
      advice.pieces.find((one) => one.piece === piece)!.joins.find((join) => join.edge === name)!.length;
    expect(edge(after, 'back', 'left armhole')).toBeCloseTo(edge(after, 'sleeve', 'back armhole edge'), 9);
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

  it('as made is taken as it is', () => {
    expect(mm(adviceOn({ made: [made('sleeve/cuff-width', 205)] }), 'sleeve/cuff-width')).toBe(205);
  });
});

describe('the way from nape to cuff', () => {
  it.each(['drop-shoulder', 'squared-drop', 'set-in', 'raglan'] as const)('is kept by a %s', (construction) => {
    expect(mm(adviceOn({ design: { construction } }), 'neck-to-cuff')).toBe(743);
    // Where the back or the neck is not known, the sleeve is not; the way is.
    const body = womanWith({ 'across-back': undefined, 'neck-base-girth': undefined });
    expect(mm(adviceOn({ body, design: { construction } }), 'neck-to-cuff')).toBe(743);
  });

  /** A raglan's sleeve begins at the neck's edge on the piece, 371/π + 75 wide. */
  it('begins at the neck in a raglan', () => {
    const advice = adviceOn({ design: { construction: 'raglan' } });
    expect(mm(advice, 'sleeve-length')).toBeCloseTo(743 - (371 / Math.PI + 75) / 2, 9);
  });

  it('is as far as a sleeve that is made reaches', () => {
    expect(mm(adviceOn({ made: [made('sleeve/sleeve-length', 500)] }), 'neck-to-cuff')).toBeCloseTo(500 + PANEL / 2, 9);
  });
});

describe('a vest', () => {
  it('has no sleeve', () => {
    const { assembled, pieces } = adviceOn({ design: { silhouette: 'vest' } });
    expect(pieces.map(({ piece }) => piece)).toEqual(['back', 'front', 'neck-band']);
    expect(assembled.filter(({ name }) => /sleeve|cuff|underarm-seam/.test(name))).toEqual([]);
  });
});
