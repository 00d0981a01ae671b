import { describe, expect, it } from 'vitest';
import { adviceOn, bodyOf, dimension, fabricOf, WOMAN } from '../../../../tests/support/fit-samples.ts';

const sure = Object.fromEntries(Object.keys(WOMAN).map((name) => [name, 0]));
const uOf = (path: string, differs: Parameters<typeof adviceOn>[0]) => dimension(adviceOn(differs), path).u;

describe('the uncertainty of a dimension', () => {
  const us = { ...sure, 'chest-girth': 15, 'nape-to-cuff': 10 };

  /** W = (chest + E)/2 + 2(t − t₀). */
  it('is by the law of propagation: the width', () => {
    expect(uOf('chest-width', { body: bodyOf(WOMAN, 'woman', us) })).toBeCloseTo(Math.hypot(7.5, 0.6), 9);
  });

  /** p = (chest + E)/2 + (2 − (4 − π)/2)t − 2t₀ = … + (π/2)t: the two ways of the thickness are one. */
  it('takes an input once, by whichever ways it enters: the panel', () => {
    const expected = Math.hypot(7.5, (Math.PI / 2) * 0.3);
    expect(uOf('back/width', { body: bodyOf(WOMAN, 'woman', us) })).toBeCloseTo(expected, 9);
  });

  /** Sleeve = nape − p/2: slopes 1 and −1/4; r = 0.6 between them takes off 2 × ¼ × 0.6 × 10 × 15. */
  it('takes in correlation: the sleeve', () => {
    const covariance = {
      names: ['nape-to-cuff', 'chest-girth'] as const,
      matrix: [
        [100, 90],
        [90, 225],
      ],
    };
    const body = { ...bodyOf(WOMAN, 'woman', us), covariance };
    const fabric = fabricOf(3, { thicknessU: 0 });
    expect(uOf('sleeve-length', { body, fabric })).toBeCloseTo(Math.sqrt(100 + 225 / 16 - 0.5 * 90), 9);
    expect(uOf('sleeve-length', { body: { ...body, covariance: null }, fabric })).toBeCloseTo(Math.hypot(10, 3.75), 9);
  });

  it('is none where nothing is uncertain', () => {
    const { assembled } = adviceOn({ body: bodyOf(WOMAN, 'woman', sure), fabric: fabricOf(3, { thicknessU: 0 }) });
    for (const { name, u } of assembled) expect(u, name).toBe(0);
  });
});
