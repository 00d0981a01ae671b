import { describe, expect, it } from 'vitest';
import { mixtureMoments, sharesOf } from './mixture.ts';

describe('a mixture of models', () => {
  it('has shares in proportion to the densities, whatever factor they have in common', () => {
    for (const common of [0, 5000, -5000]) {
      const [one, other] = sharesOf([{ logDensity: common }, { logDensity: common + Math.log(3) }]);
      expect(one).toBeCloseTo(1 / 4, 9);
      expect(other).toBeCloseTo(3 / 4, 9);
    }
  });

  it('has the mean of the means, and spreads by how far these lie apart', () => {
    const parts = [
      { logDensity: 0, mean: [0, 10], covariance: [1, 0.5, 0.5, 2] },
      { logDensity: 0, mean: [4, 2], covariance: [3, 0, 0, 4] },
    ];
    const { mean, covariance } = mixtureMoments([0.75, 0.25], parts);
    expect(mean).toEqual([1, 8]);
    // Within: ¾ and ¼ of each; between: ¾·¼ of the products of the differences 4 and −8.
    expect(covariance).toEqual([1.5 + 3, 0.375 - 6, 0.375 - 6, 2.5 + 12]);
  });
});
