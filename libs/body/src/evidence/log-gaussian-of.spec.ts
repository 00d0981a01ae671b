import { expect, it } from 'vitest';
import type { BodyProfile, ProfileValue } from '../body-profile.ts';
import { inMillimetres } from './in-millimetres.ts';
import { jointPrior } from './joint-prior.ts';
import { logGaussianOf } from './log-gaussian-of.ts';

const known = (value: number, u: number): ProfileValue => ({
  value,
  u,
  how: 'table',
  from: { code: 'assumed', params: {} },
});
const profile: BodyProfile = {
  figure: 'child',
  ageYears: 6,
  values: { 'chest-girth': known(640, 20), 'waist-girth': known(580, 30), 'arm-length': known(400, 10) },
  covariance: {
    names: ['waist-girth', 'chest-girth'],
    matrix: [
      [900, 450],
      [450, 400],
    ],
  },
  missing: {},
  notes: [],
};

it('a profile as a prior is that profile again in millimetres, with the covariance of what hangs together', () => {
  const { names, values, matrix } = inMillimetres(
    jointPrior(logGaussianOf(profile), [{ name: 'ease', mean: 60, sd: 7 }]),
  );
  expect(names).toEqual(['chest-girth', 'waist-girth', 'arm-length', 'ease']);
  const expected = [
    [640, 20],
    [580, 30],
    [400, 10],
    [60, 7],
  ] as const;
  names.forEach((name, i) => {
    expect(values[name]!.value).toBeCloseTo(expected[i]![0], 9);
    expect(values[name]!.u).toBeCloseTo(expected[i]![1], 9);
  });
  const covariance = [
    [400, 450, 0, 0],
    [450, 900, 0, 0],
    [0, 0, 100, 0],
    [0, 0, 0, 49],
  ];
  matrix.forEach((row, i) => row.forEach((cell, j) => expect(cell).toBeCloseTo(covariance[i]![j]!, 9)));
});

it('what has no covariance is independent', () => {
  const { covariance } = logGaussianOf({ ...profile, covariance: null });
  expect(covariance.filter((cell) => cell !== 0)).toHaveLength(3);
});
