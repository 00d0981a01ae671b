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

  it.each(['woman', 'man'] as const)('of a %s stay positive definite after rounding, at any size and age', (sex) => {
    for (const mappingUncertainties of [false, true]) {
      const prior = priorOf(coefficients, sex, mappingUncertainties);
      const all = coefficients.dimensions.map((_, place) => place);
      for (const age of [null, 17, 45, 90]) {
        for (const b of [-0.7, 0, 0.3, 1.5]) {
          const { n, covariance } = prior.at(age, b, all);
          expect(factorInPlace([...covariance], n)).toBe(true);
        }
      }
    }
  });

  it.each(['woman', 'man'] as const)('of a %s have a range that holds the reference body', (sex) => {
    coefficients[sex].at.forEach((at, i) => {
      expect(Math.exp(at)).toBeGreaterThan(coefficients[sex].lowest[i]!);
      expect(Math.exp(at)).toBeLessThan(coefficients[sex].highest[i]!);
    });
  });
});
