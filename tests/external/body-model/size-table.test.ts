import { expect, it } from 'vitest';
import { bodyModelEstimator, rowForChest, type BodyDimension } from '#body';
import { buildModel } from '../../../scripts/body-model/build-model.ts';
import { knownOf, soldiers1988, type Person } from './people.ts';
import { describeWithRows, halves } from './survey-rows.ts';

const rms = (errors: readonly number[]) =>
  Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);

/**
 * What a maker does without the model: look the rest up by bust. Craft Yarn Council, Standards & Guidelines, woman (from memory), against the model given stature
 * and weight, on women of 1988. The table's armhole depth is a scye depth (nape to armpit).
 */
describeWithRows('estimates against a size table read by bust', (rows) => {
  const { made, tried } = halves(rows);
  const estimator = bodyModelEstimator(buildModel(made));
  const women = soldiers1988(tried.woman, 'woman');

  const tableErrors = (name: BodyDimension, people: readonly Person[]) =>
    people.map(({ mm }) => rowForChest('woman', mm['chest-girth']!).row!.mm[name]!.mid - mm[name]!);

  it.each([
    ['upper-arm-girth', 0.6],
    ['hip-girth', 0.6],
    ['scye-depth', 0.87],
  ] as const)('%s: root mean square error at most %d of the table’s', (name, most) => {
    const answered = women.flatMap((person) => {
      const { estimates } = estimator.estimate({
        figure: 'woman',
        ageYears: null,
        known: knownOf(person, ['stature', 'weight']),
      });
      const one = estimates.find((estimate) => estimate.name === name)!;
      return 'value' in one ? [{ person, error: one.value - person.mm[name]! }] : [];
    });
    expect(answered.length).toBeGreaterThan(0.95 * women.length);
    const people = answered.map(({ person }) => person);
    expect(rms(answered.map(({ error }) => error)) / rms(tableErrors(name, people))).toBeLessThanOrEqual(most);
  });
});
