import { describe, expect, it } from 'vitest';
import { EXPECTED_THICKNESS } from './expected-thickness.ts';
import { STITCHES } from './stitch.ts';
import { FACTOR_ON_WRAPS, thicknessFromDiameter, thicknessFromWraps, WRAPS_OVER_PACKED } from './stitch-factor.ts';
import { yarnDiameterMm } from './yarn-diameter.ts';
import { YARN_WEIGHTS } from './yarn-weights.ts';

const middle = ({ from, to }: { from: number | null; to: number | null }) => (from! + to!) / 2;
const published = [2, 3, 4, 5, 6];

describe.each(STITCHES)('stitch factor of %s', (stitch) => {
  const ratios = published.map((category) => {
    const wrapsDiameter = 25.4 / middle(YARN_WEIGHTS.weights[category]!.wrapsPerInch);
    return middle(EXPECTED_THICKNESS[stitch][category]!) / wrapsDiameter;
  });

  it('is the calibration it says it is', () => {
    const geometricMean = Math.exp(ratios.reduce((sum, ratio) => sum + Math.log(ratio), 0) / ratios.length);
    expect(FACTOR_ON_WRAPS[stitch]).toBeCloseTo(geometricMean, 2);
  });

  it('gives a thickness within the published range from the middle of every category’s wraps', () => {
    for (const category of published) {
      const t = thicknessFromWraps(middle(YARN_WEIGHTS.weights[category]!.wrapsPerInch), stitch);
      expect(t).toBeGreaterThanOrEqual(EXPECTED_THICKNESS[stitch][category]!.from);
      expect(t).toBeLessThanOrEqual(EXPECTED_THICKNESS[stitch][category]!.to);
    }
  });

  /** Usual metres per 100 g of a wool of each weight, from memory. */
  it.each([
    [2, 320],
    [3, 230],
    [4, 200],
    [5, 110],
    [6, 65],
  ])('gives weight %d at %d m per 100 g within 30 %% of the middle of its range', (category, metres) => {
    const t = thicknessFromDiameter(yarnDiameterMm(metres, 'wool'), stitch);
    expect(Math.abs(t / middle(EXPECTED_THICKNESS[stitch][category]!) - 1)).toBeLessThan(0.3);
  });
});

it('takes wraps for 2.5 times the packed diameter: √(0.65/0.1) = 2.55', () => {
  expect(Math.abs(WRAPS_OVER_PACKED - Math.sqrt(0.65 / 0.1))).toBeLessThan(0.06);
});
