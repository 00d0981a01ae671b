import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitRequest } from '../../../../tests/support/fit-requests.ts';
import { everyDimension } from '../../../../tests/support/fit-samples.ts';
import { advise } from '../advice/advise.ts';

const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);

describe('the terms of a dimension', () => {
  it('add up to it, to 1e-9 mm', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        for (const [path, { value, because }] of everyDimension(advise(request))) {
          if (value === null) continue;
          if (value !== 0) expect(because.length, path).toBeGreaterThan(0);
          expect(Math.abs(sum(because.map((each) => each.value)) - value), path).toBeLessThanOrEqual(1e-9);
        }
      }),
      { numRuns: 80 },
    );
  });

  it('add up to its u², where the inputs are independent: one term an input', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        const body = request.body && { ...request.body, covariance: null };
        for (const [path, { value, because, u }] of everyDimension(advise({ ...request, body }))) {
          if (value === null) continue;
          const ofTerms = Math.sqrt(sum(because.map((each) => each.u ** 2)));
          expect(Math.abs(ofTerms - u!), path).toBeLessThanOrEqual(1e-7 * (1 + u!));
        }
      }),
      { numRuns: 60 },
    );
  });
});
