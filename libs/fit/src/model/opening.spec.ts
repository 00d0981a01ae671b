import { describe, expect, it } from 'vitest';
import { adviceOn, check, fabricOf, mm, womanWith, type Differs } from '../../../../tests/support/fit-samples.ts';
import type { OpeningPlace } from '../design/design.ts';

/** Half of an ellipse's circumference by Ramanujan's first approximation. */
const halfEllipse = (width: number, depth: number): number => {
  const a = width / 2;
  return (Math.PI / 2) * (3 * (a + depth) - Math.sqrt((3 * a + depth) * (a + 3 * depth)));
};
/** The crew of the plain request as its rules begin it: 385 round. */
const CREW = 371 / Math.PI + 25;
const P = halfEllipse(CREW, 371 / 5) + halfEllipse(CREW, 371 / 18);
const PANEL = (1015 - (4 - Math.PI) * 3) / 2;
/** Half of what lies beside the neck on the piece of a drop shoulder: 156.6. */
const SHOULDER = (PANEL - CREW - 50) / 2;

const FABRIC = fabricOf(3, { ribStretch: 0 });
const opened = (at: OpeningPlace, lengthMm: number | null, differs: Differs = {}) =>
  adviceOn({ fabric: FABRIC, ...differs, design: { opening: { at, lengthMm }, ...differs.design } });

/** In a rib that gives nothing the head of 561 needs 1.02 × 561 = 572.22 of the crew's 385, which stays as it is. */
describe('an opening whose place is chosen', () => {
  it.each([
    ['shoulder', 2],
    ['back', 2],
    ['front', 2],
    ['shoulders', 4],
  ] as const)('at the %s adds %d times its length, as far as the head needs', (at, times) => {
    const advice = opened(at, null);
    expect(mm(advice, 'neck-width')).toBeCloseTo(CREW, 9);
    expect(mm(advice, 'opening-length')).toBeCloseTo((572.22 - P) / times, 6);
    expect(advice.design.opening).toEqual({ at, length: mm(advice, 'opening-length') });
    expect(check(advice, 'head-through-neck')).toMatchObject({ verdict: 'fine', have: expect.closeTo(572.22, 6) });
  });

  /** At half a stretch of 577 the head passes the crew already. */
  it('is 40 long at least', () => {
    expect(mm(opened('shoulder', null, { fabric: fabricOf(3) }), 'opening-length')).toBeCloseTo(40, 9);
  });

  /** A head of 800 needs 816: 215 of a shoulder of 156.6, and of 150 at the back. A raglan's seam opens for half of its D of 229.5. */
  it('ends with its place', () => {
    const body = womanWith({ 'head-girth': 800 });
    expect(mm(opened('shoulder', null, { body }), 'opening-length')).toBeCloseTo(SHOULDER, 9);
    expect(mm(opened('back', null, { body }), 'opening-length')).toBeCloseTo(150, 9);
    const raglan = opened('shoulder', null, { body, design: { construction: 'raglan' } });
    expect(mm(raglan, 'opening-length')).toBeCloseTo(229.5 / 2, 9);
    expect(check(opened('shoulder', null, { body }), 'head-through-neck').verdict).toBe('fails');
  });
});

describe('an opening whose length is chosen too', () => {
  /** 2 × 60 of the 572.22: the neck is made larger for the other 452.22. */
  it('counts before the neck is made larger', () => {
    const advice = opened('back', 60);
    expect(mm(advice, 'opening-length')).toBe(60);
    expect(mm(advice, 'neck-opening')).toBeCloseTo(452.22, 5);
    expect(mm(advice, 'neck-width')).toBeGreaterThan(CREW);
  });

  it('leaves a neck as it is that passes with it', () => {
    expect(mm(opened('back', 100), 'neck-width')).toBeCloseTo(CREW, 9);
  });

  it('ends with its place', () => {
    expect(mm(opened('shoulder', 300), 'opening-length')).toBeCloseTo(SHOULDER, 9);
    expect(mm(opened('shoulder', 300), 'neck-width')).toBeCloseTo(CREW, 9);
  });
});

describe('no opening', () => {
  it('is made in a cardigan, or where none is wanted', () => {
    const body = womanWith({ 'head-girth': 800 });
    const cardigan = opened('back', 60, { body, design: { silhouette: 'cardigan' } });
    for (const advice of [cardigan, opened('none', null, { body })]) {
      expect(advice.design.opening).toEqual({ at: 'none', length: 0 });
      expect(advice.assembled.map(({ name }) => name)).not.toContain('opening-length');
    }
    expect(check(opened('none', null, { body }), 'head-through-neck').verdict).toBe('fails');
  });
});
