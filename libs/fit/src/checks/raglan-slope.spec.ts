import { describe, expect, it } from 'vitest';
import { adviceOn, check, made, womanWith, type Differs } from '../../../../tests/support/fit-samples.ts';
import type { Check } from '../messages/advice.ts';

const slope = (differs: Differs = {}): Check =>
  check(adviceOn({ ...differs, design: { construction: 'raglan', ...differs.design } }), 'raglan-slope');

/**
 * Panel p = 506.2124, neck on the piece 193.0930: x_B = (p − 0.9 × 193.0930)/2 − 0.05p = 140.9037, D_B = 229.5 − 25 = 204.5, the edge 248.3427 long.
 * The sleeve's run is x_S = G/2 − c − 0.05p, its rise D_S = √(248.3427² − x_S²).
 */
describe('the slope of a raglan', () => {
  /** G = 314.9248, c = 193.0930/6: x_S = 99.9696, D_S = 227.3328. */
  it('is compared by the rises of sleeve and body, as a share of the body’s', () => {
    expect(slope()).toMatchObject({ need: expect.closeTo(227.3328 / 204.5 - 1, 5), have: 0.25, verdict: 'fine' });
  });

  /** An arm of 400: G = 434.9248, x_S = 159.9696, D_S = 189.9563: less than the body's by 0.0711. */
  it('counts either way', () => {
    expect(slope({ body: womanWith({ 'upper-arm-girth': 400 }) }).need).toBeCloseTo(1 - 189.9563 / 204.5, 4);
  });

  /** G made 500: c = 32.1822, x_S = 192.5072, D_S = 156.8924, less by 0.2328; made 520: x_S = 202.5072, D_S = 143.7575, less by 0.297. */
  it('is poor beyond a quarter', () => {
    const wide = (top: number) => slope({ made: [made('sleeve/sleeve-top-width', top)] });
    expect(wide(500)).toMatchObject({ need: expect.closeTo(1 - 156.8924 / 204.5, 4), verdict: 'fine' });
    expect(wide(520)).toMatchObject({ need: expect.closeTo(1 - 143.7575 / 204.5, 4), verdict: 'poor' });
  });

  it('offers to change the sleeve that is made', () => {
    const poor = slope({ made: [made('sleeve/sleeve-top-width', 520)] });
    expect(poor.params).toMatchObject({ finding: 'poor', cures: ['ease-in', 'body-again'] });
    expect(poor).not.toHaveProperty('remedies');
  });
});
