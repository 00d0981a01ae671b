import { describe, expect, it } from 'vitest';
import { ageEffect } from './age-effect.ts';
import { CIVILIAN_GIRTHS } from './coefficients.ts';
import { loadBodyModel } from './load-body-model.ts';
import { priorOf } from './prior.ts';

const { coefficients } = await loadBodyModel();
const { dimensions, inflation } = coefficients;
const all = dimensions.map((_, place) => place);

/** A·Σ·Aᵀ, where each row of A says how a dimension moves with each cause and Σ is how the causes vary together. */
function spread(rows: readonly (readonly number[])[], causes: readonly (readonly number[])[]): number[][] {
  const of = (a: readonly number[], b: readonly number[]) =>
    causes.reduce((sum, row, i) => sum + row.reduce((inner, value, j) => inner + a[i]! * value * b[j]!, 0), 0);
  return rows.map((a) => rows.map((b) => of(a, b)));
}

/** The model as `SexCoefficients` writes it down, its bend replaced by the tangent at b: p² ≈ p̂² + 2p̂(b − b̂). */
function asWrittenDown(sex: 'woman' | 'man', ageYears: number | null, b: number, withMappings: boolean) {
  const own = coefficients[sex];
  const p = Math.max(0, b);
  const slopes = all.map((i) => own.bmi[i]! + 2 * p * own.bend[i]!);
  const [meanH, meanB] = own.size.mean;
  const [hh, hb, bb] = own.size.covariance;
  const size = spread(
    all.map((i) => [own.stature[i]!, slopes[i]!]),
    [
      [hh, hb],
      [hb, bb],
    ],
  );
  const { sd, sdBend, correlations } = own.girthResiduals;
  const deviation = sd.map((one, g) => Math.sqrt(one ** 2 + (sdBend[g]! * p) ** 2));
  const correlation = [
    [1, correlations[0], correlations[1]],
    [correlations[0], 1, correlations[2]],
    [correlations[1], correlations[2], 1],
  ];
  const girths = spread(
    all.map((i) => own.onGirths.map((on) => on[i]!)),
    correlation.map((row, one) => row.map((value, other) => value * deviation[one]! * deviation[other]!)),
  );
  const residual = (i: number, j: number) =>
    own.residuals[(Math.max(i, j) * (Math.max(i, j) + 1)) / 2 + Math.min(i, j)]!;
  const mapped = (i: number, j: number) =>
    own.mappingUncertainties.reduce(
      (sum, { logSd }) => sum + (logSd[dimensions[i]!] ?? 0) * (logSd[dimensions[j]!] ?? 0),
      0,
    );
  const effect = ageEffect(own.girthResiduals, ageYears);
  const girth = (i: number) => (CIVILIAN_GIRTHS as readonly string[]).indexOf(dimensions[i]!);
  const years = ageYears ?? 0;
  const thin = Math.max(0, Math.log(18.5 / 25) - b);
  const beyond = (i: number) => {
    if (girth(i) !== -1) return ((0.02 * Math.max(0, years - 60)) / 20) ** 2;
    if (['stature', 'weight'].includes(dimensions[i]!)) return 0;
    const old = (0.02 * Math.max(0, years - 58)) / 20;
    return (0.05 * p) ** 2 + (0.27 * own.bmi[i]! * p ** 2) ** 2 + (0.1 * thin) ** 2 + old ** 2;
  };
  return {
    mean: all.map((i) => {
      const ofAge = girth(i) === -1 ? 0 : effect.mean[girth(i)]!;
      return own.at[i]! + own.stature[i]! * meanH + slopes[i]! * meanB - own.bend[i]! * p ** 2 + ofAge;
    }),
    covariance: all.flatMap((i) =>
      all.map((j) => {
        const both =
          size[i]![j]! + girths[i]![j]! + inflation ** 2 * residual(i, j) + (withMappings ? mapped(i, j) : 0);
        const ofAge = girth(i) === -1 || girth(j) === -1 ? 0 : effect.covariance(girth(i), girth(j));
        return both + ofAge + (i === j ? own.shiftSd[i]! ** 2 + beyond(i) : 0);
      }),
    ),
    slopes,
    withB: all.map((i) => own.stature[i]! * hb + slopes[i]! * bb),
    meanB,
  };
}

const expectSame = (found: readonly number[], expected: readonly number[]) => {
  expect(found.length).toBe(expected.length);
  found.forEach((value, i) => expect(value).toBeCloseTo(expected[i]!, 12));
};

describe('the prior', () => {
  it.each([
    ['woman', null, 0.3, true],
    ['woman', 40, -0.1, true],
    ['woman', 75, 0.6, true],
    ['woman', 59, -0.5, false],
    ['man', null, -0.45, true],
    ['man', 25, 0.2, false],
    ['man', 90, 0, true],
  ] as const)('of a %s of %s years at b = %d is the model as it is written down', (sex, ageYears, b, withMappings) => {
    const prior = priorOf(coefficients, sex, withMappings);
    const expected = asWrittenDown(sex, ageYears, b, withMappings);
    const found = prior.at(ageYears, b, all);
    expect([prior.n, found.n, prior.meanB, found.bmi.mean]).toEqual([
      all.length,
      all.length,
      expected.meanB,
      expected.meanB,
    ]);
    expectSame(found.mean, expected.mean);
    expectSame(found.covariance, expected.covariance);
    expectSame(found.bmi.slopes, expected.slopes);
    expectSame(found.bmi.covariance, expected.withB);
  });

  it('of some dimensions, in any order, is that part of it', () => {
    const prior = priorOf(coefficients, 'man', true);
    const places = [7, 0, 12, 3];
    const [some, every] = [prior.at(70, 0.4, places), prior.at(70, 0.4, all)];
    expect(some.n).toBe(4);
    expectSame(
      some.mean,
      places.map((place) => every.mean[place]!),
    );
    expectSame(
      some.covariance,
      places.flatMap((i) => places.map((j) => every.covariance[i * every.n + j]!)),
    );
  });
});
