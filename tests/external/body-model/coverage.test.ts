import { expect, it } from 'vitest';
import { bodyModelEstimator, type BodyDimension, type BodyModelCoefficients } from '#body';
import { buildModel } from '../../../scripts/body-model/build-model.ts';
import type { Sex } from '../../../scripts/body-model/names.ts';
import { errorsOf, type ErrorOfOne } from './errors.ts';
import { oneSurveyModel } from './one-survey-model.ts';
import { SEXES, soldiers1988, soldiers2012, type Person } from './people.ts';
import { describeWithRows, halves } from './survey-rows.ts';

const SIZE: readonly BodyDimension[] = ['stature', 'weight'];
const INPUTS: readonly (readonly BodyDimension[])[] = [SIZE, ['stature', 'chest-girth', 'hip-girth']];

/** What part of the true values lies in the 90 % intervals given. */
function coverage(
  model: BodyModelCoefficients,
  sex: Sex,
  people: readonly Person[],
  inputs: readonly BodyDimension[] = SIZE,
): number {
  const errors = errorsOf(bodyModelEstimator(model, 'anyone-as-surveyed'), sex, people, inputs);
  expect(errors.length).toBeGreaterThan(300);
  return held(errors);
}

const held = (errors: readonly ErrorOfOne[]) => errors.filter(({ held }) => held).length / errors.length;

function expectBetween(part: number, low: number, high: number) {
  expect(part).toBeGreaterThanOrEqual(low);
  expect(part).toBeLessThanOrEqual(high);
}

const without = (name: BodyDimension, people: readonly Person[]): Person[] =>
  people.map(({ ageYears, mm }) => ({
    ageYears,
    mm: Object.fromEntries(Object.entries(mm).filter(([one]) => one !== name)),
  }));

/**
 * The intervals say 90 %. From one half of the rows, tried on the other. The doubt of the mappings (which waist, how curved a back) is left out here, for the rows
 * went through the same mappings and cannot show it. Civilians are in civilians.test.ts.
 */
describeWithRows('90 % intervals hold the truth', (rows) => {
  const { made, tried } = halves(rows);
  const model = buildModel(made);

  it.each(SEXES.flatMap((sex) => INPUTS.map((inputs) => [sex, inputs] as const)))(
    '%s, from %j, soldiers: 0.90 to 0.97',
    (sex, inputs) => {
      // The navel's waist of 2012, mapped, is no natural waist: it counts only where other people are asked about.
      for (const people of [soldiers1988(tried[sex], sex), without('waist-girth', soldiers2012(tried[sex], sex))])
        expectBetween(coverage(model, sex, people, inputs), 0.9, 0.97);
    },
  );

  it.each(SEXES)('%s, the model of 1988 on the people of 2012, and the other way round: 0.86 to 0.96', (sex) => {
    const [in1988, in2012] = [soldiers1988(rows[sex], sex), soldiers2012(rows[sex], sex)];
    const whole = buildModel(rows);
    const forward = oneSurveyModel(whole, sex, in1988, { widened: true });
    const back = oneSurveyModel(whole, sex, in2012, { widened: true });
    expectBetween(coverage(forward, sex, in2012), 0.86, 0.96);
    expectBetween(coverage(back, sex, in1988), 0.86, 0.96);
  });
});
