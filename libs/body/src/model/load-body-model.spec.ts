import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS } from '../body-dimension.ts';
import { factorInPlace } from './cholesky.ts';
import { loadBodyModel } from './load-body-model.ts';
import { priorOf } from './prior.ts';

const { coefficients } = await loadBodyModel();

describe('the committed coefficients', () => {
  it('are small enough for a page: under 60 kB gzipped', () => {
    const file = readFileSync(new URL('./coefficients.json', import.meta.url));
    expect(gzipSync(file).length).toBeLessThan(60_000);
  });

  it('have every dimension, and name their sources and how many people each has', () => {
    expect(coefficients.dimensions).toEqual(BODY_DIMENSIONS);
    expect(coefficients.sources).toHaveLength(3);
    for (const { people } of coefficients.sources) expect(Math.min(people.woman, people.man)).toBeGreaterThan(1000);
  });

  it.each(['woman', 'man'] as const)('of a %s stay positive definite after rounding, in every spread', (sex) => {
    for (const others of [false, true]) {
      for (const mappingUncertainties of [false, true]) {
        const { n, covariance } = priorOf(coefficients, sex, { others, mappingUncertainties })(40);
        expect(factorInPlace([...covariance], n)).toBe(true);
      }
    }
    const within = priorOf(
      { ...coefficients, [sex]: { ...coefficients[sex], betweenSurveys: coefficients.dimensions.map(() => 0) } },
      sex,
      { others: false, mappingUncertainties: false },
    )(null);
    expect(factorInPlace([...within.covariance], within.n)).toBe(true);
  });

  it.each(['woman', 'man'] as const)('of a %s have a range that holds the mean', (sex) => {
    coefficients[sex].logMean.forEach((mean, i) => {
      expect(Math.exp(mean)).toBeGreaterThan(coefficients[sex].lowest[i]!);
      expect(Math.exp(mean)).toBeLessThan(coefficients[sex].highest[i]!);
    });
  });
});
