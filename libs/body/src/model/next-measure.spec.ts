import { describe, expect, it } from 'vitest';
import { bodyModelEstimator } from './body-model-estimator.ts';
import { loadBodyModel } from './load-body-model.ts';
import { nextMeasure } from './next-measure.ts';

describe('what to measure next', () => {
  /** Variances 100 and 25, covariance 30: a tape of u 5 on the first sees 125. */
  const covariance = {
    names: ['chest-girth', 'hip-girth'],
    matrix: [
      [100, 30],
      [30, 25],
    ],
  } as const;

  it('is the one that takes most off: (s·C_j)²/(C_jj + r)', () => {
    const found = nextMeasure({
      covariance,
      sensitivities: [{ 'chest-girth': 1 }, { 'hip-girth': 2 }],
      tapeU: { 'chest-girth': 5, 'hip-girth': 5 },
    });
    // before: 100 + 4·25 = 200; measuring the chest takes off (100² + 60²)/125 = 108.8; the hip (30² + 50²)/50 = 68.
    expect(found).toEqual({
      name: 'chest-girth',
      before: Math.sqrt(200),
      after: Math.sqrt(200 - 108.8),
    });
  });

  it('counts what another measure says about it through the covariance', () => {
    const found = nextMeasure({ covariance, sensitivities: [{ 'hip-girth': 1 }], tapeU: { 'chest-girth': 0 } });
    expect(found).toMatchObject({ name: 'chest-girth', before: 5, after: Math.sqrt(25 - 900 / 100) });
  });

  it.each([
    ['nothing may be measured', [{ 'hip-girth': 1 }], {}],
    ['no target leans on the body', [{}], { 'hip-girth': 5 }],
    ['the tape is too coarse to gain anything', [{ 'hip-girth': 1 }], { 'hip-girth': 100 }],
  ])('is null where %s', (_, sensitivities, tapeU) => {
    expect(nextMeasure({ covariance, sensitivities, tapeU })).toBeNull();
  });

  it('agrees with conditioning the model on the measure, to first order', async () => {
    const { coefficients } = await loadBodyModel();
    const estimator = bodyModelEstimator(coefficients);
    const ask = (known: Parameters<typeof estimator.estimate>[0]['known']) =>
      estimator.estimate({ figure: 'woman', ageYears: 30, known });
    const stature = { name: 'stature', value: 1640, u: 10 } as const;
    const first = ask([stature]);
    const found = nextMeasure({
      covariance: first.covariance,
      sensitivities: [{ 'upper-arm-girth': 1 }],
      tapeU: { 'chest-girth': 15 },
    })!;
    const chest = first.estimates.find(({ name }) => name === 'chest-girth')!;
    const then = ask([stature, { name: 'chest-girth', value: 'value' in chest ? chest.value : NaN, u: 15 }]);
    const arm = then.estimates.find(({ name }) => name === 'upper-arm-girth')!;
    expect('u' in arm && arm.u / found.after).toBeCloseTo(1, 2);
  });
});
