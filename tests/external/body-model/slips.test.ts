import { expect, it } from 'vitest';
import { bodyQuestioner, defaultU, type BodyDimension, type Question } from '#body';
import { buildModel } from '../../../scripts/body-model/build-model.ts';
import type { Sex } from '../../../scripts/body-model/names.ts';
import { civilians, SEXES, soldiers1988, type Person } from './people.ts';
import { seeded } from '../../support/seeded-normal.ts';
import { drawOne } from './draws.ts';
import { describeWithRows, halves } from './survey-rows.ts';

const FOUR: readonly BodyDimension[] = ['stature', 'chest-girth', 'waist-girth', 'hip-girth'];
const TWELVE: readonly BodyDimension[] = [
  ...FOUR,
  'weight',
  'neck-base-girth',
  'upper-arm-girth',
  'wrist-girth',
  'arm-length',
  'shoulder-length',
  'head-girth',
  'back-waist-length',
];

type Values = Partial<Record<BodyDimension, number>>;

/** As a maker types: whole centimetres, kilograms to a tenth. */
const typed = ({ mm }: Person, names: readonly BodyDimension[]): Values =>
  Object.fromEntries(
    names.map((name) => [
      name,
      name === 'weight' ? Math.round(mm[name]! / 100) * 100 : Math.round(mm[name]! / 10) * 10,
    ]),
  );

/** A slip of one kind in a body, and the values that it hides; null where this body cannot have it. */
type Slip = (values: Values, random: () => number) => { readonly slipped: Values; readonly truth: Values } | null;

const inOne =
  (kind: (name: BodyDimension) => boolean, slip: (mm: number, random: () => number) => number): Slip =>
  (values, random) => {
    const name = drawOne(random, (Object.keys(values) as BodyDimension[]).filter(kind));
    const value = values[name]!;
    const bad = slip(value, random);
    return bad === value ? null : { slipped: { [name]: bad }, truth: { [name]: value } };
  };

const isLength = (name: BodyDimension) => name !== 'weight';
const isGirth = (name: BodyDimension) => name.endsWith('-girth');

/** Read on the inch side to a quarter, typed as centimetres. */
const inches = inOne(isLength, (mm) => Math.round((mm / 25.4) * 4) * 2.5);
/** Measured flat, to half a centimetre. */
const halfGirth = inOne(isGirth, (mm) => Math.round(mm / 10) * 5);
/** Two neighbouring digits of the whole centimetres. */
const digits = inOne(isLength, (mm, random) => {
  const text = String(mm / 10);
  const i = Math.floor(random() * (text.length - 1));
  return Number(text.slice(0, i) + text.charAt(i + 1) + text.charAt(i) + text.slice(i + 2)) * 10;
});
const waistAndHip: Slip = (values) => {
  const [waist, hip] = [values['waist-girth']!, values['hip-girth']!];
  if (Math.abs(waist - hip) <= 100) return null;
  return {
    slipped: { 'waist-girth': hip, 'hip-girth': waist },
    truth: { 'waist-girth': waist, 'hip-girth': hip },
  };
};

/** What a question would make of the values. */
const repairOf = ({ name, wouldBe }: Question): Values =>
  typeof wouldBe === 'number'
    ? { [name]: wouldBe }
    : Object.fromEntries((wouldBe ?? [{ name, value: NaN }]).map((one) => [one.name, one.value]));

/** The repair is right where it is within 2 %, or 1 cm: a half girth read to half a centimetre is known to no more. */
const isRight = (repair: Values, truth: Values) =>
  (Object.entries(truth) as [BodyDimension, number][]).every(([name, value]) => {
    const tolerance = Math.max(0.02 * value, 10);
    return Math.abs((repair[name] ?? NaN) - value) <= tolerance;
  });

describeWithRows('questions about slips', (rows) => {
  const { made, tried } = halves(rows);
  const questionsOf = bodyQuestioner(buildModel(made));

  const ask = (sex: Sex, ageYears: number | null, values: Values) =>
    questionsOf({
      figure: sex,
      ageYears,
      known: (Object.entries(values) as [BodyDimension, number][]).map(([name, value]) => ({
        name,
        value,
        u: defaultU(name, 'home').u,
      })),
    });

  /** Parts of the bodies with this slip that were asked about it, and of those, where the question had the right repair. */
  function found(sex: Sex, names: readonly BodyDimension[], slip: Slip) {
    const random = seeded(12);
    let [all, caught, right] = [0, 0, 0];
    for (const person of soldiers1988(tried[sex], sex)) {
      const values = typed(person, names);
      const made = slip(values, random);
      if (made === null) continue;
      all++;
      const question = ask(sex, person.ageYears, { ...values, ...made.slipped }).find((one) =>
        Object.keys(repairOf(one)).some((name) => name in made.truth),
      );
      if (question === undefined) continue;
      caught++;
      if (isRight(repairOf(question), made.truth)) right++;
    }
    expect(all).toBeGreaterThan(300);
    return { caught: caught / all, right: right / caught };
  }

  it.each(SEXES.flatMap((sex) => [FOUR, TWELVE].map((names) => [sex, names.length, names] as const)))(
    '%s, %d measures, nothing wrong: at most 1 body in 100 is asked',
    (sex, _, names) => {
      const people = soldiers1988(tried[sex], sex);
      const asked = people.filter((person) => ask(sex, person.ageYears, typed(person, names)).length > 0);
      expect(asked.length / people.length).toBeLessThanOrEqual(0.01);
    },
  );

  it.each(SEXES)('%s, civilians, nothing wrong: at most 5 in 100', (sex) => {
    const people = civilians(tried[sex], sex);
    const names: BodyDimension[] = ['stature', 'weight', 'waist-girth', 'hip-girth'];
    const asked = people.filter((person) => ask(sex, person.ageYears, typed(person, names)).length > 0);
    expect(asked.length / people.length).toBeLessThanOrEqual(0.05);
  });

  it.each(
    SEXES.flatMap(
      (sex) =>
        [
          [sex, 'inches typed as centimetres, 4 measures', FOUR, inches, 0.99],
          [sex, 'inches typed as centimetres, 12 measures', TWELVE, inches, 0.99],
          [sex, 'a half girth, 4 measures', FOUR, halfGirth, 0.99],
          [sex, 'a half girth, 12 measures', TWELVE, halfGirth, 0.99],
          [sex, 'two digits swapped, 12 measures', TWELVE, digits, 0.9],
          [sex, 'waist and hip swapped, over 10 cm apart, 4 measures', FOUR, waistAndHip, 0.9],
        ] as const,
    ),
  )('%s, %s: caught, and the right repair named in 0.95 of them', (sex, _, names, slip, least) => {
    const { caught, right } = found(sex, names, slip);
    expect(caught).toBeGreaterThanOrEqual(least);
    expect(right).toBeGreaterThanOrEqual(0.95);
  });
});
