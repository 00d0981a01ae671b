import { describe, expect, it } from 'vitest';
import { adviceOn, check, garmentOf, mm, womanWith, type Differs } from '../../../../tests/support/fit-samples.ts';
import type { Advice } from '../messages/advice.ts';

const squared = (differs: Differs = {}): Advice =>
  adviceOn({ ...differs, design: { construction: 'squared-drop', ...differs.design } });

/** By hand, for chest 940, back 404, scye depth 184, E = 75, t = 3: panel p = (1015 − (4 − π)3)/2 = 506.2124. */
describe('a squared drop', () => {
  /** i = (506.2124 − 404)/4 = 25.5531, Y = 506.2124 − 2i = 455.1062. */
  it('goes in by a quarter of what its panel is wider than the back', () => {
    const advice = squared();
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo(25.5531, 4);
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(455.1062, 4);
  });

  /** (506.2124 − 200)/4 = 76.6. */
  it('goes in by 75 at most', () => {
    expect(mm(squared({ body: womanWith({ 'across-back': 200 }) }), 'back/armhole-inset')).toBeCloseTo(75, 9);
  });

  /** 184 + 8 + 7.5 + 15; the top of the sleeve twice that. */
  it('has an armhole deeper than a set-in’s, and a sleeve as wide as both its straight edges', () => {
    const advice = squared();
    expect(mm(advice, 'armhole-depth')).toBeCloseTo(214.5, 9);
    expect(mm(advice, 'sleeve/sleeve-top-width')).toBeCloseTo(429, 9);
  });

  /** 743 − 455.1062/2 = 515.4469, of which i lies above the underarm: 489.8938, as of a drop shoulder. */
  it('has a sleeve that is straight for as far as the body goes in', () => {
    const advice = squared();
    expect(mm(advice, 'sleeve-length')).toBeCloseTo(515.4469, 4);
    expect(mm(advice, 'sleeve/armhole-inset')).toBeCloseTo(25.5531, 4);
    expect(mm(advice, 'underarm-seam')).toBeCloseTo(489.8938, 4);
  });

  /** 2(214.5 + 25.5531) − 3π. */
  it('has the square’s lower edges round the arm too', () => {
    expect(check(squared(), 'armhole').have).toBeCloseTo(470.6814, 4);
  });
});

/** From one that fits, W 520 in the same fabric: p = (1040 − (4 − π)3)/2 = 518.7124. */
describe('a squared drop like a garment that fits', () => {
  const like = (construction: 'squared-drop' | 'set-in'): Advice =>
    squared({
      garment: garmentOf({ 'chest-width': 520, 'cross-back-width': 450 }, { construction }),
      design: { basis: 'both' },
    });

  it('of the same kind keeps its width across the back', () => {
    const advice = like('squared-drop');
    expect(mm(advice, 'back/armhole-inset')).toBeCloseTo(34.3562, 4);
    expect(mm(advice, 'cross-back-width')).toBeCloseTo(450, 9);
  });

  /** (518.7124 − 450)/4. */
  it('of another kind goes in by a quarter of what the panel is wider', () => {
    expect(mm(like('set-in'), 'back/armhole-inset')).toBeCloseTo(17.1781, 4);
  });
});
