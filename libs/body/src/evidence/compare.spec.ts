import { describe, expect, it } from 'vitest';
import { compareWith } from './compare.ts';

const body = {
  names: ['chest-girth', 'hip-girth'],
  mean: [Math.log(900), Math.log(1000)],
  covariance: [4e-4, 2e-4, 2e-4, 9e-4],
};
const hidden = [{ name: 'ease', mean: 80, sd: 30 }];
const chest = {
  id: 'chest',
  source: 'sweater',
  dimensions: { 'chest-girth': 1 },
  hidden: { ease: 1 },
  constant: 5,
  observed: 1000,
  tau: 3,
  u: 4,
};

describe('an observation beside what was expected', () => {
  it('differs by what was observed less the sum, with the uncertainty of all that it rests on', () => {
    const { comparisons, logDensity } = compareWith(body, hidden, [chest]);
    const [one] = comparisons;
    expect(one).toMatchObject({ source: 'sweater', id: 'chest' });
    expect(one!.expected).toBeCloseTo(900 + 80 + 5, 9);
    expect(one!.difference).toBeCloseTo(15, 9);
    const variance = (0.02 * 900) ** 2 + 30 ** 2 + 3 ** 2 + 4 ** 2;
    expect(one!.u).toBeCloseTo(Math.sqrt(variance), 9);
    expect(logDensity).toBeCloseTo(-(15 ** 2) / variance / 2 - Math.log(variance) / 2, 9);
  });

  it('has a density together with others that share what it rests on', () => {
    const hip = { ...chest, id: 'hip', dimensions: { 'hip-girth': 1 }, observed: 1060 };
    const { comparisons, logDensity } = compareWith(body, hidden, [chest, hip]);
    const [a, b] = [15, 1060 - 1000 - 80 - 5];
    expect(comparisons.map(({ difference }) => Math.round(difference * 1e6) / 1e6)).toEqual([a, b]);
    const across = 2e-4 * 900 * 1000 + 30 ** 2;
    const [aa, bb] = [comparisons[0]!.u ** 2, comparisons[1]!.u ** 2];
    const determinant = aa * bb - across ** 2;
    const distance = (bb * a * a - 2 * across * a * b + aa * b * b) / determinant;
    expect(logDensity).toBeCloseTo(-distance / 2 - Math.log(determinant) / 2, 9);
  });

  it('is read no finer than half a millimetre', () => {
    const exact = { ...chest, hidden: {}, tau: 0, u: 0 };
    const [one] = compareWith({ ...body, covariance: [0, 0, 0, 0] }, [], [exact]).comparisons;
    expect(one!.u).toBeCloseTo(0.5, 9);
  });
});
