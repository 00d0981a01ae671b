import { describe, expect, it } from 'vitest';
import { adviceOn, made, mm, womanWith, type Differs } from '../../../../tests/support/fit-samples.ts';
import type { Advice } from '../messages/advice.ts';

const setIn = (differs: Differs = {}): Advice =>
  adviceOn({ ...differs, design: { construction: 'set-in', ...differs.design } });

/**
 * By hand, for chest 940, back 404, upper arm 280, scye depth 184, E = 75, t = 3 and a fold of (4 − π)3 = 2.5752:
 * panel p = (1015 − 2.5752)/2 = 506.2124; sleeve G = 280 + 0.5·75 − 2.5752 = 314.9248; A = 184 + 8 + 7.5 = 199.5.
 */
describe('a set-in body', () => {
  /** Y = 404 + 0.12·75 = 413, i = (506.2124 − 413)/2 = 46.6062, b = i/2. */
  it('is as wide as the back with its share of the ease, and binds off half of what it goes in', () => {
    const advice = setIn();
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(413, 9);
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo(46.6062, 4);
    expect(mm(advice, 'back/underarm-bind-off')).toBeCloseTo(23.3031, 4);
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(199.5, 9);
  });

  /** A back of 480 would leave (506.2124 − 489)/2 = 8.6. */
  it('goes in by at least 15', () => {
    const advice = setIn({ body: womanWith({ 'across-back': 480 }) });
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo(15, 9);
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(476.2124, 4);
  });

  /** Y = 259, i = 123.6062: half of it is 61.8031, more than 0.35·314.9248/2 = 55.1118. A vest has no sleeve to fit; its band adds its depth of (250 − 143.0930 − 60)/4 = 11.7268. */
  it('binds off no more than 0.35 of half the sleeve', () => {
    const body = womanWith({ 'across-back': 250 });
    expect(mm(setIn({ body }), 'back/underarm-bind-off')).toBeCloseTo(55.1118, 4);
    const vest = setIn({ body, design: { silhouette: 'vest' } });
    expect(mm(vest, 'back/underarm-bind-off')).toBeCloseTo(61.8031 + 11.7268, 4);
    expect(mm(vest, 'back/armhole-depth')).toBeCloseTo(199.5 + 11.7268, 4);
  });

  /** w_p = 371/π + 25 + 50 = 193.0930: shoulder (413 − w_p)/2 = 109.9535, fall a fifth; underarm 587 + 371/18 − 21.9907 − 199.5. */
  it('has a shoulder that falls by a fifth of its width, and its underarm below that', () => {
    const advice = setIn();
    expect(mm(advice, 'back/shoulder-width')).toBeCloseTo(109.9535, 4);
    expect(mm(advice, 'shoulder-fall')).toBeCloseTo(21.9907, 4);
    expect(mm(advice, 'body-to-underarm')).toBeCloseTo(386.1204, 4);
  });
});

describe('a set-in sleeve', () => {
  /**
   * h = min(0.4·199.5, 80) = 79.8; ℓ = 23.3031 + √(23.3031² + 79.8²) + 119.7 = 226.1360; c = 0.11·314.9248 = 34.6417.
   * H² = (226.1360 − 23.3031 − 34.6417)² − (157.4624 − 23.3031 − 34.6417)² = 168.1911² − 99.5176², H = 135.5895.
   */
  it('has a cap whose seam is as long as the armhole’s', () => {
    const advice = setIn();
    expect(mm(advice, 'sleeve/sleeve-top-width')).toBeCloseTo(314.9248, 4);
    expect(mm(advice, 'sleeve/cap-top-width')).toBeCloseTo(69.2835, 4);
    expect(mm(advice, 'sleeve/cap-height')).toBeCloseTo(135.5895, 3);
    expect(mm(advice, 'sleeve/underarm-bind-off')).toBeCloseTo(23.3031, 4);
  });

  /**
   * Along the top 743 − 413/2 − 135.5895 = 400.9105; under the arm 432 + 25 − (199.5 + 21.9907 − 20.6111 − 184) = 440.1204. Halfway between them, and
   * the cap.
   */
  it('lies between its two ways, its cap included', () => {
    const advice = setIn();
    expect(mm(advice, 'underarm-seam')).toBeCloseTo(420.5154, 3);
    expect(mm(advice, 'sleeve-length')).toBeCloseTo(556.105, 3);
  });

  /** A = 220: ℓ = 246.6280, H² = 188.6831² − 99.5176². A = 190: h = 76, not 80, and ℓ = 23.3031 + √(23.3031² + 76²) + 114 = 216.7955, H² = 158.8506² − 99.5176². */
  it.each([
    [220, 160.3047],
    [190, 123.8135],
  ])('for an armhole made %d deep has a cap of %d', (depth, height) => {
    expect(mm(setIn({ made: [made('back/armhole-depth', depth)] }), 'sleeve/cap-height')).toBeCloseTo(height, 3);
  });

  /**
   * An arm of 480 leaves 514.9248/2 − 23.3031 − 56.6417 = 177.5176 to go across, and a slope of 226.1360 − 79.9448 = 146.2: no cap. Where the armhole
   * is not made it is deepened until ℓ = 79.9448 + √(177.5176² + (A/2)²), and ℓ is then A + 26.6280: b + √(b² + 80²) − 80.
   * A + 26.6280 − 79.9448 = √(177.5176² + A²/4): ¾A² − 106.6337A + 53.3169² − 177.5176² = 0, A = (106.6337 + 312.0580)/1.5 = 279.1278.
   */
  it('has no cap where half the sleeve is wider than the seam of a made armhole is long', () => {
    const body = womanWith({ 'upper-arm-girth': 480 });
    expect(mm(setIn({ body, made: [made('back/armhole-depth', 199.5)] }), 'sleeve/cap-height')).toBeNaN();
    const deepened = setIn({ body });
    expect(mm(deepened, 'armhole-depth')).toBeCloseTo(279.1278, 3);
    expect(mm(deepened, 'sleeve/cap-height')).toBeCloseTo(279.1278 / 2, 3);
  });
});

describe('a cap that is made', () => {
  it.each([
    [135.5895, 199.5],
    [160.3047, 220],
    [123.8135, 190],
  ])('%d high gives an armhole %d deep', (height, depth) => {
    const advice = setIn({ made: [made('sleeve/cap-height', height)] });
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(depth, 3);
    expect(mm(advice, 'sleeve/cap-height')).toBe(height);
  });
});
