import { expect, it } from 'vitest';
import { bodyModelEstimator, type BodyDimension } from '#body';
import { buildModel } from '../../../scripts/body-model/build-model.ts';
import type { Sex } from '../../../scripts/body-model/names.ts';
import { errorsOf, rootMeanSquare, type ErrorOfOne } from './errors.ts';
import { civilians, SEXES, type Person } from './people.ts';
import { describeWithRows, folds } from './survey-rows.ts';

const GIRTHS = ['waist-girth', 'hip-girth', 'upper-arm-girth'] as const;

/** kg/m² */
const CLASSES = [
  [0, 18.5],
  [18.5, 25],
  [25, 30],
  [30, 35],
  [35, 40],
  [40, 100],
] as const;

/** Years; the survey says 80 of everybody of 80 and over. */
const DECADES = [18, 30, 40, 50, 60, 70, 81];

/** Over a body mass index of 40, root mean square errors of at most, mm. */
const HEAVY_RMS: Readonly<Record<Sex, Readonly<Record<(typeof GIRTHS)[number], number>>>> = {
  woman: { 'waist-girth': 70, 'hip-girth': 77, 'upper-arm-girth': 38 },
  man: { 'waist-girth': 62, 'hip-girth': 79, 'upper-arm-girth': 31 },
};

const bmi = ({ mm }: Person) => mm.weight! / 1000 / (mm.stature! / 1000) ** 2;
const coverage = (errors: readonly ErrorOfOne[]) => errors.filter(({ held }) => held).length / errors.length;
const bias = (errors: readonly ErrorOfOne[]) => errors.reduce((sum, { error }) => sum + error, 0) / errors.length;

/**
 * Waist, hip and upper arm of civilians of 18 to 80 and of every weight, each tried by a model made without its fold of the rows (NHANES 2017 to March 2020).
 */
describeWithRows('civilians of every size and age', (rows) => {
  const models = folds(rows, 4).map(({ made, tried }) => ({
    estimator: bodyModelEstimator(buildModel(made), 'anyone-as-surveyed'),
    tried,
  }));
  const errorsFrom = (sex: Sex, inputs: readonly BodyDimension[]) =>
    models
      .flatMap(({ estimator, tried }) => errorsOf(estimator, sex, civilians(tried[sex], sex), inputs))
      .filter(({ name }) => (GIRTHS as readonly BodyDimension[]).includes(name));

  it.each(SEXES)('%s, given stature, weight and age: every cell is held, none is biased', (sex) => {
    const errors = errorsFrom(sex, ['stature', 'weight']);
    for (const name of GIRTHS) {
      const ofGirth = errors.filter((one) => one.name === name);
      expect(coverage(ofGirth)).toBeGreaterThanOrEqual(0.89);
      expect(coverage(ofGirth)).toBeLessThanOrEqual(0.96);
      const cells = [
        ...CLASSES.map(([low, high]) => ofGirth.filter(({ person }) => bmi(person) >= low && bmi(person) < high)),
        ...DECADES.slice(1).map((to, i) =>
          ofGirth.filter(({ person }) => person.ageYears! >= DECADES[i]! && person.ageYears! < to),
        ),
      ].filter((cell) => cell.length >= 100);
      expect(cells.length).toBeGreaterThanOrEqual(11);
      for (const cell of cells) {
        expect(coverage(cell)).toBeGreaterThanOrEqual(0.86);
        expect(Math.abs(bias(cell))).toBeLessThanOrEqual(name === 'upper-arm-girth' ? 5 : 10);
      }
      const heavy = ofGirth.filter(({ person }) => bmi(person) >= 40);
      expect(rootMeanSquare(heavy)).toBeLessThanOrEqual(HEAVY_RMS[sex][name]);
    }
  });

  it.each(SEXES)('%s, given stature and waist alone: hip and upper arm are held in 0.85 at least', (sex) => {
    const errors = errorsFrom(sex, ['stature', 'waist-girth']);
    for (const name of GIRTHS.slice(1))
      expect(coverage(errors.filter((one) => one.name === name))).toBeGreaterThanOrEqual(0.85);
  });
});
