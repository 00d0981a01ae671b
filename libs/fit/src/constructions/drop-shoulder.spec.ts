import { describe, expect, it } from 'vitest';
import { adviceOn, check, garmentOf, made, mm, womanWith } from '../../../../tests/support/fit-samples.ts';

/**
 * By hand, for chest 940, upper arm 280, scye depth 184, E = 75, t = 3: panel p = (1015 − (4 − π)3)/2 = 506.2124; a set-in
 * armhole A₀ = 184 + 8 + 7.5 = 199.5, a drop shoulder's 25 more.
 */
describe('a drop shoulder', () => {
  it('goes straight up: the width between the armholes is the panel’s', () => {
    const advice = adviceOn();
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(506.2124, 4);
    expect(mm(advice, 'back/width')).toBeCloseTo(506.2124, 4);
    expect(mm(advice, 'back/armhole-inset')).toBe(0);
  });

  /** 199.5 + 25; the top of the sleeve is twice that, the seam no girth. */
  it('has an armhole deeper than a set-in’s, and a sleeve as wide as both its edges', () => {
    const advice = adviceOn();
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(224.5, 9);
    expect(mm(advice, 'sleeve/sleeve-top-width')).toBeCloseTo(449, 9);
    expect(mm(advice, 'sleeve-top-width')).toBeCloseTo(224.5, 9);
  });

  /** An arm of 500 asks for (500 + 0.5·75)/2. */
  it('is at least as deep as half the upper sleeve', () => {
    expect(mm(adviceOn({ body: womanWith({ 'upper-arm-girth': 500 }) }), 'armhole-depth')).toBeCloseTo(268.75, 9);
  });

  /** 743 − 506.2124/2, all of it below the underarm. */
  it('has a sleeve without a cap', () => {
    const advice = adviceOn();
    expect(mm(advice, 'sleeve-length')).toBeCloseTo(489.8938, 4);
    expect(mm(advice, 'underarm-seam')).toBeCloseTo(489.8938, 4);
  });

  /** (506.2124 − 193.0930)/2 a shoulder; underarm 587 + 371/18 − 224.5, and no fall. */
  it('has level shoulders', () => {
    const advice = adviceOn();
    expect(mm(advice, 'back/shoulder-width')).toBeCloseTo(156.5597, 4);
    expect(mm(advice, 'body-to-underarm')).toBeCloseTo(383.1111, 4);
    expect(advice.assembled.map(({ name }) => name)).not.toContain('shoulder-fall');
  });

  /** Twice the depth less πt for the seam's curve in the fabric: 449 − 9.4248. */
  it('has an armhole of twice its depth to go round the arm', () => {
    expect(check(adviceOn(), 'armhole').have).toBeCloseTo(439.5752, 4);
  });
});

describe('a drop shoulder’s armhole', () => {
  it('is as it was made, and the sleeve with it', () => {
    const advice = adviceOn({ made: [made('back/armhole-depth', 250)] });
    expect(mm(advice, 'armhole-depth')).toBe(250);
    expect(mm(advice, 'sleeve/sleeve-top-width')).toBe(500);
  });

  it('is half of a sleeve’s top that was made', () => {
    const advice = adviceOn({ made: [made('sleeve/sleeve-top-width', 460)] });
    expect(mm(advice, 'armhole-depth')).toBe(230);
  });

  /** The piece is deeper by the band of 25 that will fill it. */
  it('of a vest leaves room for its band', () => {
    const advice = adviceOn({ design: { silhouette: 'vest' } });
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(224.5, 9);
    expect(mm(advice, 'back/armhole-depth')).toBeCloseTo(249.5, 9);
    expect(mm(advice, 'back/armhole-inset')).toBe(25);
  });

  /** 210 + 25 from a set-in; 235 − 15 + 25 from a squared drop; its own as it is. */
  it.each([
    ['set-in', 210, 235],
    ['squared-drop', 235, 245],
    ['drop-shoulder', 240, 240],
  ] as const)('from a garment that fits, a %s of %d, is %d', (construction, depth, expected) => {
    const garment = garmentOf({ 'chest-width': 510, 'armhole-depth': depth }, { construction });
    expect(mm(adviceOn({ garment, design: { basis: 'both' } }), 'armhole-depth')).toBeCloseTo(expected, 9);
  });
});
