import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS, type BodyDimension } from '../body-dimension.ts';
import { defaultU } from '../default-u.ts';
import { factorInPlace } from '../model/cholesky.ts';
import { loadBodyModel } from '../model/load-body-model.ts';
import { bodyFromEvidence, type EvidenceInput } from './body-from-evidence.ts';
import type { Observation } from './observation.ts';

const model = await loadBodyModel();
const posteriorOf = bodyFromEvidence(model.coefficients);
const home = (name: BodyDimension, value: number) => ({ name, value, u: defaultU(name, 'home').u });
const classic = (name: string) => ({ name, mean: 75, sd: 14.4 });

/** A sweater so wide round the chest and so long from the nape to the cuff. */
const sweater = (source: string, chest: number, cuff = 720): readonly Observation[] => [
  {
    id: 'chest-width',
    source,
    dimensions: { 'chest-girth': 1 },
    hidden: { [source]: 1 },
    constant: 0,
    observed: chest,
    tau: 0,
    u: 17,
    anchors: source,
  },
  {
    id: 'sleeve-length',
    source,
    dimensions: { 'nape-to-cuff': 1 },
    hidden: {},
    constant: 0,
    observed: cuff,
    tau: 30,
    u: 12,
  },
];
const input = (rest: Partial<EvidenceInput>): EvidenceInput => ({
  figure: 'woman',
  ageYears: null,
  known: [],
  hidden: [],
  observations: [],
  ...rest,
});

describe('a body from evidence', () => {
  it('without observations is what the estimator says', () => {
    const known = [home('stature', 1650), home('chest-girth', 940), home('hip-girth', 990)];
    for (const figure of ['woman', 'man', 'unsaid'] as const) {
      const { values } = posteriorOf(input({ figure, known }));
      for (const one of model.estimate({ figure, ageYears: null, known }).estimates) {
        if (!('value' in one)) throw new Error(`${one.name} is estimated`);
        expect(values[one.name]!.value).toBeCloseTo(one.value, 3);
        expect(values[one.name]!.u).toBeCloseTo(one.u, 3);
      }
    }
  });

  it.each([900, 1000, 1300, 1650])('from a sweater of %d round the chest alone has every dimension', (chest) => {
    const { values, contradictions, outsideSurveys } = posteriorOf(
      input({ hidden: [classic('a')], observations: sweater('a', chest) }),
    );
    expect(Object.keys(values)).toEqual([...BODY_DIMENSIONS, 'a']);
    for (const { value, u } of Object.values(values)) expect(Number.isFinite(value) && u > 0).toBe(true);
    expect(Math.abs(values['chest-girth']!.value - (chest - 75))).toBeLessThan(15);
    expect(contradictions).toEqual([]);
    expect(outsideSurveys.length > 0).toBe(chest > 1250);
  });

  it('is surer with a tape, and with a second sweater that agrees', () => {
    const u = (rest: Partial<EvidenceInput>) => posteriorOf(input(rest)).values['chest-girth']!.u;
    const one = { hidden: [classic('a')], observations: sweater('a', 1000) };
    const two = {
      hidden: [classic('a'), classic('b')],
      observations: [...sweater('a', 1000), ...sweater('b', 1000)],
    };
    expect(u(two)).toBeLessThan(u(one));
    expect(u({ ...one, known: [home('chest-girth', 925)] })).toBeLessThan(u(one));
  });

  it('believes the tape where a sweater contradicts it, asks, and lets the ease be what it must', () => {
    const known = [home('chest-girth', 900)];
    const { values, contradictions } = posteriorOf(
      input({ known, hidden: [classic('a')], observations: sweater('a', 840, 900) }),
    );
    expect(values['chest-girth']!.value).toBeCloseTo(900, -1);
    expect(values['a']!.value).toBeLessThan(-40);
    expect(values['nape-to-cuff']!.value).toBeLessThan(780);
    expect(contradictions.map((one) => one.between === 'tape' && one.observation.id)).toEqual([
      'chest-width',
      'sleeve-length',
    ]);
  });

  it('asks about two sweaters that contradict one another, and is less sure for it', () => {
    const hidden = [classic('a'), classic('b')];
    const of = (chest: number) =>
      posteriorOf(input({ hidden, observations: [...sweater('a', 1000), ...sweater('b', chest)] }));
    expect(of(1010).contradictions).toEqual([]);
    expect(of(1200).contradictions).toMatchObject([{ between: 'sources', id: 'chest-width', sources: ['a', 'b'] }]);
    expect(of(1200).values['chest-girth']!.u).toBeGreaterThan(of(1010).values['chest-girth']!.u);
  });

  it('carries the covariance of sweater and body', () => {
    const { names, matrix, values } = posteriorOf(
      input({ figure: 'unsaid', hidden: [classic('a')], observations: sweater('a', 1000) }),
    );
    const [chest, ease] = [names.indexOf('chest-girth'), names.indexOf('a')];
    // Chest and ease add up to what was measured: what the one has more, the other has less.
    expect(matrix[chest]![ease]! / (values['chest-girth']!.u * values['a']!.u)).toBeLessThan(-0.5);
    expect(factorInPlace(matrix.flat(), names.length)).toBe(true);
    names.forEach((name, i) => expect(Math.sqrt(matrix[i]![i]!)).toBeCloseTo(values[name]!.u, 9));
  });

  it('is there for any sweaters and any tape, however they contradict', () => {
    const sweaters = fc.array(
      fc.record({ chest: fc.integer({ min: 500, max: 2400 }), cuff: fc.integer({ min: 300, max: 1200 }) }),
      { maxLength: 6 },
    );
    const tape = fc.option(fc.integer({ min: 600, max: 2000 }), { nil: null });
    fc.assert(
      fc.property(sweaters, tape, fc.constantFrom('woman', 'man', 'unsaid'), (several, chest, figure) => {
        const names = several.map((_, i) => `sweater ${i}`);
        const { values } = posteriorOf(
          input({
            figure,
            known: chest === null ? [] : [home('chest-girth', chest)],
            hidden: names.map(classic),
            observations: several.flatMap(({ chest, cuff }, i) => sweater(names[i]!, chest, cuff)),
          }),
        );
        for (const name of BODY_DIMENSIONS) {
          expect(values[name]!.value).toBeGreaterThan(0);
          expect(values[name]!.value).toBeLessThan(Infinity);
          expect(values[name]!.u).toBeGreaterThan(0);
        }
      }),
      { numRuns: 100 },
    );
  });
});
