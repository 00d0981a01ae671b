import { describe, expect, it } from 'vitest';
import { adviceOn, made, mm, womanWith, type Differs } from '../../../../tests/support/fit-samples.ts';
import type { Advice } from '../messages/advice.ts';

const setIn = (differs: Differs = {}): Advice =>
  adviceOn({ ...differs, design: { construction: 'set-in', ...differs.design } });

/**
 * By hand, for chest 940, back 404, upper arm 280, scye depth 184, E = 75, t = 3 and a fold of (4 − π)3 = 2.5752:
 * panel p = (1015 − 2.5752)/2 = 506.2124; sleeve G = 280 + 0.35·75 − 2.5752 = 303.6748; A = 184 + 13 + 7.5 = 204.5.
 */
describe('a set-in body', () => {
  /** Y = 404 + 0.12·75 = 413, i = (506.2124 − 413)/2 = 46.6062, b = i/2. */
  it('is as wide as the back with its share of the ease, and binds off half of what it goes in', () => {
    const advice = setIn();
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(413, 9);
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo(46.6062, 4);
    expect(mm(advice, 'back/underarm-bind-off')).toBeCloseTo(23.3031, 4);
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(204.5, 9);
  });

  /** A back of 480 would leave (506.2124 − 489)/2 = 8.6. */
  it('goes in by at least 15', () => {
    const advice = setIn({ body: womanWith({ 'across-back': 480 }) });
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo(15, 9);
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(476.2124, 4);
  });

  /** Y = 259, i = 123.6062: half of it is 61.8031, more than 0.35·303.6748/2 = 53.1431. A vest has no sleeve to fit; its band adds 25. */
  it('binds off no more than 0.35 of half the sleeve', () => {
    const body = womanWith({ 'across-back': 250 });
    expect(mm(setIn({ body }), 'back/underarm-bind-off')).toBeCloseTo(53.1431, 4);
    const vest = setIn({ body, design: { silhouette: 'vest' } });
    expect(mm(vest, 'back/underarm-bind-off')).toBeCloseTo(61.8031 + 25, 4);
    expect(mm(vest, 'back/armhole-depth')).toBeCloseTo(204.5 + 25, 9);
  });

  /** w_p = 371/π + 25 + 50 = 193.0930: shoulder (413 − w_p)/2 = 109.9535, fall a fifth; underarm 587 + 371/18 − 21.9907 − 204.5. */
  it('has a shoulder that falls by a fifth of its width, and its underarm below that', () => {
    const advice = setIn();
    expect(mm(advice, 'back/shoulder-width')).toBeCloseTo(109.9535, 4);
    expect(mm(advice, 'shoulder-fall')).toBeCloseTo(21.9907, 4);
    expect(mm(advice, 'body-to-underarm')).toBeCloseTo(381.1204, 4);
  });
});

describe('a set-in sleeve', () => {
  /**
   * h = min(0.4·204.5, 80) = 80; ℓ = 23.3031 + √(23.3031² + 80²) + 124.5 = 231.1280; c = 0.11·303.6748 = 33.4042.
   * H² = (231.1280 − 23.3031 − 33.4042)² − (151.8374 − 23.3031 − 33.4042)² = 174.4207² − 95.1301², H = 146.1945.
   */
  it('has a cap whose seam is as long as the armhole’s', () => {
    const advice = setIn();
    expect(mm(advice, 'sleeve/sleeve-top-width')).toBeCloseTo(303.6748, 4);
    expect(mm(advice, 'sleeve/cap-top-width')).toBeCloseTo(66.8085, 4);
    expect(mm(advice, 'sleeve/cap-height')).toBeCloseTo(146.1945, 3);
    expect(mm(advice, 'sleeve/underarm-bind-off')).toBeCloseTo(23.3031, 4);
  });

  /** 743 − 413/2 = 536.5, of which the cap is 146.1945. */
  it('reaches the cuff from the armhole’s edge, its cap included', () => {
    const advice = setIn();
    expect(mm(advice, 'sleeve-length')).toBeCloseTo(536.5, 9);
    expect(mm(advice, 'underarm-seam')).toBeCloseTo(390.3055, 3);
  });

  /** A = 220: ℓ = 246.6280. A = 190: h = 76, not 80, and ℓ = 23.3031 + √(23.3031² + 76²) + 114 = 216.7955. */
  it.each([
    [220, 164.378],
    [190, 128.7574],
  ])('for an armhole made %d deep has a cap of %d', (depth, height) => {
    expect(mm(setIn({ made: [made('back/armhole-depth', depth)] }), 'sleeve/cap-height')).toBeCloseTo(height, 3);
  });

  /** An arm of 480 leaves 503.6748/2 − 23.3031 − 55.4042 = 173.1 to go across, and a slope of 231.1280 − 78.7073 = 152.4. */
  it('has no cap where half the sleeve is wider than the seam is long', () => {
    expect(mm(setIn({ body: womanWith({ 'upper-arm-girth': 480 }) }), 'sleeve/cap-height')).toBeNaN();
  });
});

describe('a cap that is made', () => {
  it.each([
    [146.1945, 204.5],
    [164.378, 220],
    [128.7574, 190],
  ])('%d high gives an armhole %d deep', (height, depth) => {
    const advice = setIn({ made: [made('sleeve/cap-height', height)] });
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(depth, 3);
    expect(mm(advice, 'sleeve/cap-height')).toBe(height);
  });
});
