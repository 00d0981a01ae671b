import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HOWS } from '#measure';
import { BODY_DIMENSIONS, type BodyDimension } from './body-dimension.ts';
import { FIGURES, type Body, type BodyMeasure, type Figure } from './body.ts';
import type { BodyProfile } from './body-profile.ts';
import type { Estimator } from './estimator.ts';
import { AGES, humanLimits } from './human-limits.ts';
import { resolveBody } from './resolve-body.ts';
import { rowBodyMeasures } from './sizes/row-body-measures.ts';
import { sizeRow, sizeTable } from './sizes/size-tables.ts';

const home = (name: BodyDimension, value: number): BodyMeasure => ({ name, value, how: 'home' });
const body = (figure: Figure, ageYears: number | null, ...measures: BodyMeasure[]): Body => ({
  figure,
  ageYears,
  measures,
});
const valuesOf = ({ values }: BodyProfile) =>
  Object.fromEntries(Object.entries(values).map(([name, { value }]) => [name, value]));

const ALIKE = { code: 'body-model', params: { known: [], version: 0 } } as const;
const HEADS_DIFFER = { code: 'not-estimated', params: {} } as const;

/** The simplest policy there could be: one size, and no idea of heads. */
const oneSize: Estimator = {
  estimate: ({ known }) => ({
    from: ALIKE,
    estimates: BODY_DIMENSIONS.filter((name) => !known.some((value) => value.name === name)).map((name) =>
      name === 'head-girth' ? { name, missing: HEADS_DIFFER } : { name, value: 500, u: 20, low: 467, high: 533 },
    ),
    covariance: { names: [], matrix: [] },
    notes: [{ code: 'body-model-age', params: { oldest: 58 } }],
  }),
};

describe('a child', () => {
  it('of size 6 by chest: the row, the formulas, and the age the size is for', () => {
    const profile = resolveBody(body('child', null, home('chest-girth', 635)), { estimate: true });
    const values = valuesOf(profile);
    expect(values['nape-to-cuff']).toBeCloseTo(20.5 * 25.4, 9);
    expect(values['scye-depth']).toBeCloseTo(5 * 25.4, 9);
    expect(values['neck-base-girth']).toBeCloseTo(110 + 0.285 * 635, 9);
    expect(values['head-girth']).toBe(511);
    expect(profile.ageYears).toBe(6);
    expect(profile.values['across-back']!.from).toEqual({
      code: 'size-row',
      params: { row: 'Craft Yarn Council, child 6', mark: 'read in a published page' },
    });
    expect(profile.notes.map(({ code }) => code)).toEqual(['size-row', 'age-assumed']);
    expect(profile.missing.stature).toEqual({ code: 'not-published', params: { figure: 'child' } });
  });

  it('of size 2 gets its nape to cuff from its own arm', () => {
    const profile = resolveBody(body('child', 2, home('chest-girth', 21 * 25.4)), { estimate: true });
    // 9¼/2 + 8½ + 0.6 × 4¼ = 15.675 in, where the table has 18
    expect(profile.values['nape-to-cuff']!.value).toBeCloseTo(15.675 * 25.4, 9);
    expect(profile.notes.map(({ code }) => code)).toEqual(['size-row', 'nape-to-cuff-from-arm']);
  });

  it('with a measured arm gets its nape to cuff from that arm', () => {
    const measures = [home('chest-girth', 635), home('underarm-length', 330)];
    const profile = resolveBody(body('child', 6, ...measures), { estimate: true });
    expect(profile.values['nape-to-cuff']!.value).toBeCloseTo(330 + (10.25 / 2 + 0.6 * 5) * 25.4, 9);
    expect(profile.notes.at(-1)).toMatchObject({ code: 'nape-to-cuff-from-arm' });
  });

  it('with a measured nape to cuff keeps it', () => {
    const measures = [home('chest-girth', 635), home('underarm-length', 330), home('nape-to-cuff', 540)];
    const profile = resolveBody(body('child', 6, ...measures), { estimate: true });
    expect(profile.values['nape-to-cuff']).toEqual({
      value: 540,
      u: 10,
      how: 'home',
      from: { code: 'measured', params: { how: 'home' } },
    });
  });

  it('without a chest is read by age, less surely', () => {
    const byAge = resolveBody(body('child', 6), { estimate: true });
    const byChest = resolveBody(body('child', 6, home('chest-girth', 635)), { estimate: true });
    expect(byAge.values['chest-girth']!.value).toBeCloseTo(635, 9);
    expect(byAge.values['chest-girth']!.u).toBeCloseTo(63.5, 9);
    expect(byAge.values['upper-arm-girth']!.u).toBeGreaterThan(byChest.values['upper-arm-girth']!.u);
    expect(byAge.values['upper-arm-girth']!.value).toBe(byChest.values['upper-arm-girth']!.value);
  });

  it('of which nothing is known has nothing filled in', () => {
    const profile = resolveBody(body('child', null), { estimate: true, estimator: oneSize });
    expect(profile.values).toEqual({});
    expect(profile.missing['chest-girth']?.code).toBe('chest-or-age-needed');
  });

  it.each([
    [home('wrist-girth', 127), 6], // 108 + 3.2 × 6
    [home('stature', 1430), 10],
    [home('hip-girth', 28.2 * 25.4), 8], // 28 in is size 8's
    [home('head-girth', 548), 14],
  ])('of which %j alone is known is of the size that this is nearest to', (measure, age) => {
    const profile = resolveBody(body('child', null, measure), { estimate: true });
    expect(profile.ageYears).toBe(age);
    expect(profile.values['across-back']!.value).toBeGreaterThan(0);
  });

  it('with an adult’s chest goes on beyond its table: girths with the chest, wider, and marked', () => {
    const profile = resolveBody(body('child', 14, home('chest-girth', 1000)), { estimate: true });
    const ratio = 1000 / (32.5 * 25.4);
    expect(profile.values['hip-girth']!.value).toBeCloseTo(ratio * 35.5 * 25.4, 6);
    expect(profile.values['across-back']!.value).toBeCloseTo(Math.sqrt(ratio) * 13 * 25.4, 6);
    expect(profile.values['hip-girth']!.u).toBeGreaterThan(80);
    expect(profile.values['across-back']!.outsideSurveys).toBe(true);
    expect(profile.values['chest-girth']!.value).toBe(1000);
    expect(profile.notes[0]).toMatchObject({ code: 'beyond-sizes', params: { side: 'above', figure: 'child' } });
    expect(profile.missing['across-back']).toBeUndefined();
  });

  it('that is newly born, or 20, is answered', () => {
    for (const who of [body('baby', 0), body('child', 20), body('baby', 5), body('child', 0)]) {
      const { values } = resolveBody(who, { estimate: true });
      for (const name of ['chest-girth', 'head-girth', 'nape-to-cuff', 'scye-girth'] as const)
        expect(values[name]!.value).toBeGreaterThan(0);
    }
  });

  it('never meets the adult model', () => {
    const never: Estimator = {
      estimate: () => {
        throw new Error('asked about a child');
      },
    };
    for (const figure of ['child', 'baby'] as const) {
      expect(() => resolveBody(body(figure, 1.5), { estimate: true, estimator: never })).not.toThrow();
    }
  });
});

it('a baby of 12 months: every nape to cuff is from the arm, the head is its age’s', () => {
  const profile = resolveBody(body('baby', null, home('chest-girth', 18 * 25.4)), { estimate: true });
  const values = valuesOf(profile);
  expect(values['nape-to-cuff']).toBeCloseTo((8.25 / 2 + 7.5 + 0.6 * 3.75) * 25.4, 9);
  expect(values['head-girth']).toBe(463);
  expect(values['wrist-girth']).toBeCloseTo(111.2, 9); // 108 + 3.2
  // Its table has no waist, hip or forearm: its chest, 1.04 of it, 0.55 × (upper arm + wrist).
  expect(values['waist-girth']).toBeCloseTo(457.2, 9);
  expect(values['hip-girth']).toBeCloseTo(1.04 * 457.2, 9);
  expect(profile.values['hip-girth']!.u).toBeCloseTo(25, 0);
  expect(values['forearm-girth']).toBeCloseTo(0.55 * (6.5 * 25.4 + 111.2), 9);
});

describe('an adult', () => {
  it('without an estimator is read in the table by chest, and never gets a neck, a head or a hand', () => {
    const profile = resolveBody(body('woman', null, home('chest-girth', 39 * 25.4)), { estimate: true });
    expect(profile.values['upper-arm-girth']).toMatchObject({ value: 304.8, u: 23.5, how: 'table' }); // L: 12 in
    expect(profile.notes).toMatchObject([{ code: 'between-sizes' }]);
    for (const name of [
      'neck-base-girth',
      'wrist-girth',
      'hand-girth',
      'head-girth',
      'shoulder-girth',
      'scye-girth',
    ] as const) {
      expect(profile.values[name]).toBeUndefined();
      expect(profile.missing[name]?.code).toBe('not-in-table');
    }
    expect(resolveBody(body('man', null, home('chest-girth', 990)), { estimate: true }).values).toHaveProperty(
      'back-hip-length',
    );
  });

  it.each([
    ['no chest', body('woman', null, home('wrist-girth', 160)), 'chest-needed'],
    ['beyond the table', body('woman', null, home('chest-girth', 1700)), 'no-size-row'],
    ['a figure not said', body('unsaid', null, home('chest-girth', 600)), 'no-size-row'],
  ])('without an estimator and with %s keeps what was measured', (_, who, code) => {
    const profile = resolveBody(who, { estimate: true });
    expect(Object.keys(profile.values)).toHaveLength(1);
    expect(profile.missing['hip-girth']?.code).toBe(code);
  });

  it('with an estimator takes its word for everything not measured, "measure it" included', () => {
    const profile = resolveBody(body('woman', 40, home('chest-girth', 940)), { estimate: true, estimator: oneSize });
    expect(profile.values['chest-girth']!.value).toBe(940);
    expect(profile.values['waist-girth']).toEqual({
      value: 500,
      u: 20,
      how: 'estimated',
      from: ALIKE,
    });
    expect(profile.missing).toEqual({ 'head-girth': HEADS_DIFFER });
    expect(profile.notes).toEqual([{ code: 'body-model-age', params: { oldest: 58 } }]);
  });

  it('of a run of sizes says which size it is', () => {
    const { values } = resolveBody(
      body('woman', null, ...rowBodyMeasures(sizeRow(sizeTable('craft-yarn-council-woman'), 'M'))),
      {
        estimate: false,
      },
    );
    expect(values['hip-girth']).toEqual({
      value: 990.6, // 39 in
      u: 46.8,
      how: 'table',
      from: { code: 'size-row', params: { row: 'Craft Yarn Council, woman M', mark: 'from memory' } },
    });
  });
});

it('estimating turned off fills in nothing', () => {
  const profile = resolveBody(body('child', 6, home('chest-girth', 635)), { estimate: false });
  expect(Object.keys(profile.values)).toEqual(['chest-girth']);
  expect(Object.keys(profile.missing)).toHaveLength(BODY_DIMENSIONS.length - 1);
});

it('refuses the first wrong measure with its place', () => {
  const wrong = body('woman', null, home('chest-girth', 940), home('wrist-girth', 0));
  expect(() => resolveBody(wrong, { estimate: true })).toThrow(
    expect.objectContaining({ code: 'measure-out-of-range', pointer: '/measures/1/value' }),
  );
});

describe('for any sound body', () => {
  const anyBody = fc.constantFrom(...FIGURES).chain((figure) => {
    const measure = fc.constantFrom(...BODY_DIMENSIONS).chain((name) => {
      const [smallest, largest] = humanLimits(figure, name);
      return fc.record(
        {
          name: fc.constant(name),
          value: fc.double({ min: smallest / 2.54, max: largest * 2.54, noNaN: true }),
          how: fc.constantFrom(...HOWS),
          u: fc.double({ min: 0.001, max: smallest / 2.54 / 2, noNaN: true }),
        },
        { requiredKeys: ['name', 'value', 'how'] },
      );
    });
    const [youngest, oldest] = AGES[figure];
    return fc.record({
      figure: fc.constant(figure),
      ageYears: fc.option(fc.double({ min: youngest, max: oldest, noNaN: true })),
      measures: fc.uniqueArray(measure, { selector: ({ name }) => name }),
    });
  }) as fc.Arbitrary<Body>;
  const anyOptions = fc.constantFrom({ estimate: true }, { estimate: false }, { estimate: true, estimator: oneSize });

  it('every dimension is usable or missing with a reason, never both, never NaN; what was measured stays', () => {
    fc.assert(
      fc.property(anyBody, anyOptions, (who, options) => {
        const before = structuredClone(who);
        const { values, missing, covariance } = resolveBody(who, options);
        expect(who).toEqual(before);
        for (const name of BODY_DIMENSIONS) {
          const value = values[name];
          expect(value === undefined).toBe(missing[name] !== undefined);
          if (value === undefined) continue;
          expect(value.value).toBeGreaterThan(0);
          expect(value.value).toBeLessThan(Infinity);
          expect(value.u).toBeGreaterThan(0);
          expect(value.u).toBeLessThan(Infinity);
          expect(value.from.code).not.toBe('');
        }
        for (const measure of who.measures) expect(values[measure.name]!.value).toBe(measure.value);
        covariance?.names.forEach((name, i) => {
          expect(covariance.matrix[i]![i]).toBeCloseTo(values[name]!.u ** 2, 6);
          covariance.names.forEach((_, j) =>
            expect(covariance.matrix[i]![j]).toBeCloseTo(covariance.matrix[j]![i]!, 6),
          );
        });
      }),
      { numRuns: 500 },
    );
  });
});
