import { describe, expect, it } from 'vitest';
import {
  adviceOn,
  dimension,
  fabricOf,
  garmentOf,
  made,
  mm,
  womanWith,
} from '../../../../tests/support/fit-samples.ts';

/** p = (1015 − (4 − π)3)/2 of the plain request; its crew neck on the piece is 371/π + 75 wide. */
const PANEL = (1015 - (4 - Math.PI) * 3) / 2;
const NECK = 371 / Math.PI + 75;

describe('the width between the armhole edges', () => {
  it('of a drop shoulder is the panel', () => {
    expect(mm(adviceOn(), 'cross-back-width')).toBeCloseTo(PANEL, 9);
  });

  /** i = (p − 404)/4 = 25.55. */
  it('of a squared drop is the panel less two insets, a quarter of what it is wider than the back', () => {
    const advice = adviceOn({ design: { construction: 'squared-drop' } });
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo((PANEL - 404) / 4, 9);
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(PANEL - (PANEL - 404) / 2, 9);
  });

  /** E = 500: p = 718.7, a quarter of what it is over 404 is 78.7. */
  it('of a squared drop goes in by 75 at most', () => {
    const advice = adviceOn({ design: { construction: 'squared-drop', ease: { mm: 500 } } });
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo(75, 9);
  });

  /** 404 + 0.12 × 75 = 413. */
  it('of a set-in is the back with 0.12 of the ease', () => {
    const advice = adviceOn({ design: { construction: 'set-in' } });
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(413, 9);
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo((PANEL - 413) / 2, 9);
  });

  /** A broad back: 490 + 9 > p − 30, so 15 goes off each side. */
  it('of a set-in stays 15 inside the panel on each side', () => {
    const advice = adviceOn({ body: womanWith({ 'across-back': 490 }), design: { construction: 'set-in' } });
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(PANEL - 30, 9);
  });

  it('of a raglan is none', () => {
    const { assembled } = adviceOn({ design: { construction: 'raglan' } });
    expect(assembled.map(({ name }) => name)).not.toContain('cross-back-width');
  });

  /** A set-in's 420 + 0.12 × 20. */
  it('is a garment’s own, where its construction has one', () => {
    const garment = garmentOf({ 'chest-width': 520, 'cross-back-width': 420 }, { construction: 'set-in' });
    const design = { basis: 'both', construction: 'set-in', ease: { as: 'garment', changeMm: 20 } } as const;
    expect(mm(adviceOn({ garment, design }), 'cross-back-width')).toBeCloseTo(422.4, 9);
  });

  it.each([
    { across: 460, changeMm: 0, width: 460 },
    { across: 460, changeMm: 20, width: 462.4 },
    { across: 490, changeMm: 0, width: 490 },
  ])('of a squared drop like one that is $across across is $width', ({ across, changeMm, width }) => {
    const garment = garmentOf({ 'chest-width': 520, 'cross-back-width': across }, { construction: 'squared-drop' });
    const advice = adviceOn({
      garment,
      design: { basis: 'garment', construction: 'squared-drop', ease: { as: 'garment', changeMm } },
    });
    expect(advice.design.construction).toBe('squared-drop');
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(width, 9);
  });
});

describe('heights', () => {
  /** Shoulder (413 − w_p)/2, falling by a fifth of it; underarm at L + d_b − f − A. */
  it('of a set-in fall along the shoulder', () => {
    const advice = adviceOn({ design: { construction: 'set-in' } });
    const fall = 0.2 * ((413 - NECK) / 2);
    expect(mm(advice, 'back/shoulder-width')).toBeCloseTo((413 - NECK) / 2, 9);
    expect(mm(advice, 'shoulder-fall')).toBeCloseTo(fall, 9);
    expect(mm(advice, 'body-to-underarm')).toBeCloseTo(587 + 371 / 18 - fall - 199.5, 9);
  });

  it('of a drop shoulder do not', () => {
    expect(mm(adviceOn(), 'body-to-underarm')).toBeCloseTo(587 + 371 / 18 - 224.5, 9);
  });

  /** From the nape: 587 − 229.5. */
  it('of a raglan run from the nape', () => {
    expect(mm(adviceOn({ design: { construction: 'raglan' } }), 'body-to-underarm')).toBeCloseTo(357.5, 9);
  });
});

describe('a vest', () => {
  /** Finished as planned; the piece is a band of 25 deeper, and narrower on each side. */
  it('is cut out for its armhole bands', () => {
    const advice = adviceOn({ design: { silhouette: 'vest', construction: 'set-in' } });
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(199.5, 9);
    expect(mm(advice, 'back/armhole-depth')).toBeCloseTo(224.5, 9);
    expect(mm(advice, 'back/cross-back-width')).toBeCloseTo(413 - 50, 9);
    expect(mm(advice, 'back/body-to-underarm')).toBeCloseTo(mm(advice, 'body-to-underarm') - 25, 9);
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo((PANEL - 413) / 2 + 25, 9);
  });
});

/** Each goes round both halves of the piece's armhole: β bound off more, and β deeper, where β = 25. */
describe('a vest’s armhole bands', () => {
  const vest = (construction: 'set-in' | 'drop-shoulder' | 'squared-drop') =>
    adviceOn({ design: { silhouette: 'vest', construction } });

  it('are two pieces as deep as the neck’s', () => {
    const advice = vest('set-in');
    expect(advice.pieces.find(({ piece }) => piece === 'armhole-band')).toMatchObject({ make: 2, workedFrom: 'edge' });
    expect(mm(advice, 'armhole-band/band-depth')).toBe(25);
    expect(adviceOn().pieces.map(({ piece }) => piece)).not.toContain('armhole-band');
  });

  /** 2(b + β + √((i − b)² + h²) + A + β − h), b = i/2, h = 0.4 × 199.5 = 79.8, i = (p − 413)/2. */
  it('of a set-in go along its curve', () => {
    const inset = (PANEL - 413) / 2;
    const [bindOff, rise] = [inset / 2, 79.8];
    const edge = 2 * (bindOff + 25 + Math.hypot(inset - bindOff, rise) + 199.5 + 25 - rise);
    expect(mm(vest('set-in'), 'armhole-band/armhole-edge')).toBeCloseTo(edge, 9);
  });

  /** 2(i + β + A + β): without an inset 2(25 + 224.5 + 25); i = (p − 404)/4 with A = 214.5. */
  it('of the drops go along the underarm and up', () => {
    expect(mm(vest('drop-shoulder'), 'armhole-band/armhole-edge')).toBeCloseTo(549, 9);
    const squared = 2 * ((PANEL - 404) / 4 + 25 + 214.5 + 25);
    expect(mm(vest('squared-drop'), 'armhole-band/armhole-edge')).toBeCloseTo(squared, 9);
  });
});

describe('a cardigan’s fronts', () => {
  /** q = 40, v = 10: (p + 10)/2 − 40; half neck w_p/2 − 40 + 5. */
  it('leave room for the bands: two of them, and the overlap once, make the panel', () => {
    const advice = adviceOn({ design: { silhouette: 'cardigan', frontBandMm: 40, overlapMm: 10 } });
    expect(mm(advice, 'left-front/width')).toBeCloseTo((PANEL + 10) / 2 - 40, 9);
    expect(2 * (mm(advice, 'left-front/width') + 40) - 10).toBeCloseTo(mm(advice, 'back/width'), 9);
    expect(mm(advice, 'left-front/neck-width')).toBeCloseTo(NECK / 2 - 35, 9);
  });

  /** From the shoulder line down to where the neck begins. */
  it('have an edge from the hem up to the neck', () => {
    const advice = adviceOn({ design: { silhouette: 'cardigan' } });
    const edge = mm(advice, 'shoulder-to-hem') - mm(advice, 'left-front/front-neck-depth');
    expect(mm(advice, 'left-front/front-edge')).toBeCloseTo(edge, 9);
    expect(mm(advice, 'front-band/front-edge')).toBeCloseTo(edge, 9);
  });
});

describe('a body fitted to what is made already', () => {
  /** A sleeve 470 wide at its top joins a drop shoulder's armhole of 235. */
  it('takes a drop shoulder’s armhole from its sleeve', () => {
    expect(mm(adviceOn({ made: [made('sleeve/sleeve-top-width', 470)] }), 'armhole-depth')).toBe(235);
  });

  it('takes an armhole as made, a vest’s less its band', () => {
    expect(mm(adviceOn({ made: [made('back/armhole-depth', 250)] }), 'armhole-depth')).toBe(250);
    const vest = adviceOn({ design: { silhouette: 'vest' }, made: [made('back/armhole-depth', 250)] });
    expect(mm(vest, 'armhole-depth')).toBe(225);
  });

  /** 400 up to the underarm and 224.5 of armhole, less the back neck. */
  it('takes its length from a side seam as made', () => {
    const advice = adviceOn({ made: [made('back/body-to-underarm', 400)] });
    expect(mm(advice, 'centre-back-length')).toBeCloseTo(400 + 224.5 - 371 / 18, 9);
    expect(dimension(advice, 'centre-back-length')).toMatchObject({ low: mm(advice, 'centre-back-length') });
  });

  it('takes the neck from a back as made', () => {
    const advice = adviceOn({ fabric: fabricOf(3, { ribStretch: 4 }), made: [made('back/neck-width', 210)] });
    expect(mm(advice, 'neck-width')).toBe(160);
  });
});
