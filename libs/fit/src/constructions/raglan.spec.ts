import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeBody } from '../../../../tests/support/fit-requests.ts';
import { adviceOn, check, made, mm, type Differs } from '../../../../tests/support/fit-samples.ts';
import type { Advice } from '../messages/advice.ts';

const raglan = (differs: Differs = {}): Advice =>
  adviceOn({ ...differs, design: { construction: 'raglan', ...differs.design } });
const PANEL = (1015 - (4 - Math.PI) * 3) / 2;
const NECK = 371 / Math.PI + 75;

/** Length of the slope between the bind-off under the arm and the neck, from the named dimensions alone. */
function slopeOfBody(advice: Advice): number {
  const run = (mm(advice, 'back/width') - mm(advice, 'back/neck-width')) / 2 - mm(advice, 'back/raglan-bind-off');
  return Math.hypot(run, mm(advice, 'back/raglan-depth'));
}
function slopeOfSleeve(advice: Advice): number {
  const across = mm(advice, 'sleeve/sleeve-top-width') - mm(advice, 'sleeve/cap-top-width');
  return Math.hypot(across / 2 - mm(advice, 'sleeve/raglan-bind-off'), mm(advice, 'sleeve/sleeve-raglan-depth'));
}

describe('a raglan', () => {
  /** D = 184 + 8 + 7.5 + 30 from the nape; the piece ends a band lower; w_B = 0.9w_p; b = 0.05p. */
  it('is 0.9 of the neck at its top and binds off 0.05 of the panel', () => {
    const advice = raglan();
    expect(mm(advice, 'raglan-depth')).toBeCloseTo(229.5, 9);
    expect(mm(advice, 'back/raglan-depth')).toBeCloseTo(204.5, 9);
    expect(mm(advice, 'back/neck-width')).toBeCloseTo(0.9 * NECK, 9);
    expect(mm(advice, 'back/raglan-bind-off')).toBeCloseTo(0.05 * PANEL, 9);
    expect(mm(advice, 'back/centre-back-length')).toBeCloseTo(587 - 25, 9);
  });

  /** c = min(w_p/6, G/8), G = 317.5 − (4 − π)3: the neck's sixth of 32.2 is the smaller. */
  it('has a sleeve top from the neck or the sleeve, whichever is less', () => {
    expect(mm(raglan(), 'sleeve/cap-top-width')).toBeCloseTo((2 * NECK) / 6, 9);
    const narrow = raglan({ made: [made('sleeve/sleeve-top-width', 240)] });
    expect(mm(narrow, 'sleeve/cap-top-width')).toBeCloseTo((2 * 240) / 8, 9);
  });

  it('joins a sleeve whose slope is as long as the body’s', () => {
    fc.assert(
      fc.property(wholeBody, (body) => {
        const advice = raglan({ body });
        fc.pre(!Number.isNaN(mm(advice, 'sleeve/sleeve-raglan-depth')));
        expect(slopeOfSleeve(advice)).toBeCloseTo(slopeOfBody(advice), 6);
      }),
      { numRuns: 60 },
    );
  });

  it('takes its depth from a sleeve that is made', () => {
    const depth = mm(raglan(), 'sleeve/sleeve-raglan-depth') + 12;
    const advice = raglan({ made: [made('sleeve/sleeve-raglan-depth', depth)] });
    expect(mm(advice, 'sleeve/sleeve-raglan-depth')).toBe(depth);
    expect(slopeOfSleeve(advice)).toBeCloseTo(slopeOfBody(advice), 6);
    expect(mm(advice, 'raglan-depth')).toBeGreaterThan(229.5);
  });

  /** The crew's front lies 371/5 − 371/18 lower than its back. */
  it('has the neck cut into its front alone, by what it is deeper there', () => {
    const advice = raglan();
    expect(mm(advice, 'front/front-neck-depth')).toBeCloseTo(371 / 5 - 371 / 18, 9);
    expect(advice.pieces[0]!.dimensions.map(({ name }) => name)).not.toContain('back-neck-depth');
  });

  it('of a vest ends as high as it is finished: its band lies below', () => {
    const advice = raglan({ design: { silhouette: 'vest' } });
    expect(mm(advice, 'back/raglan-depth')).toBeCloseTo(229.5, 9);
    expect(mm(advice, 'back/body-to-underarm')).toBeCloseTo(587 - 229.5 - 25, 9);
  });
});

describe('the check of its two depths', () => {
  /**
   * x_B = (506.2124 − 0.9 × 193.0930)/2 − 25.3106 = 140.9037, x_S = 157.4624 − 32.1822 − 25.3106 = 99.9696; the edge √(140.9037² + 204.5²) = 248.3427;
   * D_S = √(248.3427² − 99.9696²) = 227.3328, 0.1117 more than 204.5.
   */
  it('is for comfort: fine while they are within a quarter of one another', () => {
    const advice = raglan();
    expect(mm(advice, 'sleeve/sleeve-raglan-depth')).toBeCloseTo(227.3328, 3);
    expect(check(advice, 'raglan-slope')).toMatchObject({
      comfort: true,
      need: expect.closeTo(0.11165, 5),
      have: 0.25,
      u: 0,
      verdict: 'fine',
    });
  });

  /** A narrow sleeve under a wide body slopes little, so that its seam must rise the more. */
  it('is poor, and no worse, where they are not', () => {
    const advice = raglan({ made: [made('sleeve/sleeve-top-width', 170)], design: { ease: { mm: 250 } } });
    const { need, have, verdict } = check(advice, 'raglan-slope');
    const depths = ['back/raglan-depth', 'sleeve/sleeve-raglan-depth'].map((path) => mm(advice, path));
    expect(need).toBeCloseTo(depths[1]! / depths[0]! - 1, 9);
    expect(need).toBeGreaterThan(have!);
    expect(verdict).toBe('poor');
    expect(advice.collisions.map(({ dimension }) => dimension)).not.toContain('sleeve-raglan-depth');
  });

  it('is of raglans with sleeves alone', () => {
    expect(check(adviceOn(), 'raglan-slope').verdict).toBe('n/a');
    expect(check(raglan({ design: { silhouette: 'vest' } }), 'raglan-slope').verdict).toBe('n/a');
  });
});

/** A V cardigan's own front of 30 under a back of 10 + a band of 25: the front would end 5 above the piece's top. */
it('a front neck shallower than the back’s is not cut, and the front edge ends at the piece’s top', () => {
  const design = {
    silhouette: 'cardigan',
    neckline: 'v',
    bandMm: 25,
    frontNeckDepthMm: 30,
    backNeckDepthMm: 10,
  } as const;
  const advice = raglan({ design });
  expect(mm(advice, 'left-front/front-neck-depth')).toBe(0);
  expect(mm(advice, 'left-front/front-edge')).toBeCloseTo(mm(advice, 'left-front/centre-back-length'), 9);
});
