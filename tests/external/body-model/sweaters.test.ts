import { expect, it } from 'vitest';
import { bodyFromEvidence, type BentTerm, type BodyDimension, type Observation } from '#body';
import { rulesWith, sweaterEvidence, type Sweater, type WearerSoFar } from '#fit';
import { buildModel } from '../../../scripts/body-model/build-model.ts';
import type { Sex } from '../../../scripts/body-model/names.ts';
import { normalDraw, seeded } from '../../support/seeded-normal.ts';
import { drawOne } from './draws.ts';
import { rootMeanSquare } from './errors.ts';
import { knownOf, SEXES, soldiers1988, type Person } from './people.ts';
import { describeWithRows, halves } from './survey-rows.ts';

const ASKED: readonly BodyDimension[] = [
  'chest-girth',
  'across-back',
  'upper-arm-girth',
  'nape-to-cuff',
  'scye-depth',
  'wrist-girth',
];
const WEARER: WearerSoFar = { sized: rulesWith({}), backWaist: null, neckBase: null };
const CONSTRUCTIONS = ['drop-shoulder', 'squared-drop', 'set-in', 'raglan'] as const;
const FITS = [null, 'close', 'classic', 'loose'] as const;

/** 95th percentile of the standard normal distribution. */
const Z90 = 1.6449;

const value = (mm: number, u: number) => ({ value: mm, u, how: 'home' }) as const;

/** A sweater of any construction, measured at chest, armhole, sleeve top, sleeve, cuff, and its back or neck; the numbers are filled in below. */
const anySweater = (random: () => number): Sweater => ({
  name: 'sweater',
  construction: drawOne(random, CONSTRUCTIONS),
  values: {
    'chest-width': value(500, 8.7),
    'cross-back-width': value(400, 11.5),
    'armhole-depth': value(210, 11.5),
    'sleeve-top-width': value(180, 11.5),
    'sleeve-length': value(480, 11.5),
    'cuff-width': value(100, 5.8),
    'neck-width': value(170, 11.5),
  },
  sleeveFrom: 'seam',
  sleeve: 'long',
  title: '',
  thicknessU: 0.3,
  wornStretched: false,
  thicknessMm: 3 + 4 * random(),
  layer: null,
  fits: drawOne(random, FITS),
  neckline: null,
  wears: {},
});

const easeTerm = (term: number | BentTerm, ease: number) =>
  typeof term === 'number'
    ? term * ease
    : term.below * Math.min(ease, term.at) + term.above * Math.max(0, ease - term.at);

/** The same observations as they would have been on this person: the sum they are said to be, off by their own spread and the reading's. */
function observedOn(
  { mm }: Person,
  observations: readonly Observation[],
  ease: number,
  normal: () => number,
): Observation[] {
  return observations.map((one) => {
    const body = Object.entries(one.dimensions).reduce(
      (sum, [name, times]) => sum + times * mm[name as BodyDimension]!,
      0,
    );
    const eases = Object.values(one.hidden).reduce<number>((sum, term) => sum + easeTerm(term, ease), 0);
    return { ...one, observed: body + eases + one.constant + Math.hypot(one.tau, one.u) * normal() };
  });
}

/** From one half of the rows, tried on sweaters of the people of the other half (ANSUR I), which are made by the table that reads them, with its spreads. */
describeWithRows('a body from a sweater that fits', (rows) => {
  const { made, tried } = halves(rows);
  const posteriorOf = bodyFromEvidence(buildModel(made), 'anyone-as-surveyed');

  function errors(sex: Sex, known: readonly BodyDimension[]) {
    const random = seeded(8);
    const draws = seeded(9);
    const normal = () => normalDraw(draws);
    return soldiers1988(tried[sex], sex).flatMap((person) => {
      const { ease, observations } = sweaterEvidence(anySweater(random), WEARER);
      const { values } = posteriorOf({
        figure: sex,
        ageYears: person.ageYears,
        known: knownOf(person, known),
        hidden: [ease],
        observations: observedOn(person, observations, ease.mean + ease.sd * normal(), normal),
      });
      return ASKED.map((name) => {
        const { value, u } = values[name]!;
        const truth = person.mm[name]!;
        return { name, error: value - truth, held: Math.abs(Math.log(truth / value)) <= (Z90 * u) / value };
      });
    });
  }

  const [alone, withSize] = [[], ['stature', 'weight']].map((known) =>
    SEXES.flatMap((sex) => errors(sex, known as readonly BodyDimension[])),
  ) as [ReturnType<typeof errors>, ReturnType<typeof errors>];

  it.each(ASKED)(
    '%s: intervals of 90 %% hold 0.86 to 0.96, and errors do not grow where stature and weight are known',
    (name) => {
      const of = (list: typeof alone) => list.filter((one) => one.name === name);
      const held = of(alone).filter((one) => one.held).length / of(alone).length;
      expect(held).toBeGreaterThanOrEqual(0.86);
      expect(held).toBeLessThanOrEqual(0.96);
      expect(rootMeanSquare(of(withSize)) / rootMeanSquare(of(alone))).toBeLessThan(1);
    },
  );
});
