import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS, type BodyDimension } from '../body-dimension.ts';
import type { Figure } from '../body.ts';
import { defaultU } from '../default-u.ts';
import { loadBodyModel } from './load-body-model.ts';

const model = await loadBodyModel();

/** A body of a woman as she would type it, mm (weight: g). */
const BODY = {
  stature: 1650,
  weight: 64_000,
  'chest-girth': 940,
  'waist-girth': 760,
  'hip-girth': 1010,
  'neck-base-girth': 360,
  'wrist-girth': 155,
} satisfies Partial<Record<BodyDimension, number>>;
type Typed = Partial<Record<BodyDimension, number>>;

function ask(typed: Typed, figure: Figure = 'woman') {
  const known = (Object.entries(typed) as [BodyDimension, number][]).map(([name, value]) => ({
    name,
    value,
    u: defaultU(name, 'home').u,
  }));
  return model.questionsOf({ figure, ageYears: 40, known });
}

const only = (typed: Typed, figure?: Figure) => {
  const questions = ask(typed, figure);
  expect(questions).toHaveLength(1);
  return questions[0]!;
};

describe('questions', () => {
  it('are none about a plausible body, said or unsaid', () => {
    expect(ask(BODY)).toEqual([]);
    expect(ask(BODY, 'unsaid')).toEqual([]);
    expect(ask({})).toEqual([]);
  });

  it('ask whether 37 was inches: 37 × 2.54 = 94', () => {
    const question = only({ ...BODY, 'chest-girth': 370 });
    expect(question).toMatchObject({ name: 'chest-girth', code: 'inches-as-centimetres' });
    expect(question.wouldBe).toBeCloseTo(939.8, 6);
    expect(question.z).toBeLessThan(-5);
    expect(question.params).toEqual({ name: 'chest-girth', smaller: true, alone: false });
  });

  it('ask of a measure that stands alone beside nobody’s but those who were surveyed', () => {
    expect(only({ 'chest-girth': 370 }).params).toEqual({ name: 'chest-girth', smaller: true, alone: true });
  });

  it('ask about every value where all were typed in the wrong unit', () => {
    const inches = { stature: 650, 'chest-girth': 370, 'waist-girth': 300, 'hip-girth': 400 };
    const questions = ask(inches);
    expect(questions.map(({ name, code }) => [name, code])).toEqual(
      Object.keys(inches).map((name) => [name, 'inches-as-centimetres']),
    );
    expect(questions.find(({ name }) => name === 'hip-girth')!.wouldBe).toBeCloseTo(1016, 6);
  });

  it('find the two of three that are in inches', () => {
    const questions = ask({ stature: 1650, 'chest-girth': 370, 'hip-girth': 400 });
    expect(questions.map(({ name, code }) => `${name} ${code}`)).toEqual([
      'chest-girth inches-as-centimetres',
      'hip-girth inches-as-centimetres',
    ]);
  });

  it('ask the other way round: centimetres typed as inches', () => {
    expect(only({ ...BODY, 'chest-girth': 94 * 25.4 })).toMatchObject({ code: 'centimetres-as-inches' });
  });

  it('ask whether a girth was measured flat', () => {
    expect(only({ ...BODY, 'hip-girth': 505 })).toMatchObject({ name: 'hip-girth', code: 'half-girth', wouldBe: 1010 });
  });

  it('ask about two digits', () => {
    expect(only({ ...BODY, 'wrist-girth': 510 })).toMatchObject({
      name: 'wrist-girth',
      code: 'swapped-digits',
      wouldBe: 150,
    });
  });

  it('ask once about two fields that changed places', () => {
    expect(only({ ...BODY, 'waist-girth': 1010, 'hip-girth': 760 })).toMatchObject({
      name: 'waist-girth',
      code: 'swapped-fields',
      wouldBe: [
        { name: 'waist-girth', value: 760 },
        { name: 'hip-girth', value: 1010 },
      ],
      params: { name: 'waist-girth', other: 'hip-girth' },
    });
  });

  it('ask about pounds', () => {
    const question = only({ ...BODY, weight: 141_000 });
    expect(question).toMatchObject({ name: 'weight', code: 'pounds-as-kilograms' });
    expect(question.wouldBe).toBeCloseTo(63_957, 0);
  });

  it('ask to read the tape again where no slip explains a value', () => {
    expect(only({ ...BODY, 'neck-base-girth': 560 })).toMatchObject({
      name: 'neck-base-girth',
      code: 'unlikely',
      wouldBe: null,
    });
  });

  it('ask about a neck larger than the chest', () => {
    expect(ask({ 'chest-girth': 940, 'neck-base-girth': 1000 }).map(({ name }) => name)).toContain('neck-base-girth');
  });

  it('are about what neither sex explains, where none is said', () => {
    const man = { stature: 1830, 'chest-girth': 1080, 'neck-base-girth': 450 };
    expect(ask(man, 'unsaid')).toEqual([]);
    expect(only({ ...man, 'chest-girth': 425 }, 'unsaid')).toMatchObject({ name: 'chest-girth' });
  });

  it('are none about children and babies, for the model is of adults', () => {
    expect(ask({ 'chest-girth': 600 }, 'child')).toEqual([]);
    expect(ask({ 'chest-girth': 430 }, 'baby')).toEqual([]);
  });

  it('are at most one a value, finite, whatever was typed', () => {
    const anything = fc.dictionary(fc.constantFrom(...BODY_DIMENSIONS), fc.double({ min: 30, max: 3000, noNaN: true }));
    fc.assert(
      fc.property(anything, fc.constantFrom('woman', 'man', 'unsaid'), (typed, figure) => {
        const questions = ask(typed as Typed, figure as Figure);
        const about = questions.flatMap(({ name, wouldBe }) =>
          Array.isArray(wouldBe) ? wouldBe.map((one: { name: string }) => one.name) : [name],
        );
        expect(new Set(about).size).toBe(about.length);
        for (const { z } of questions) expect(Number.isFinite(z)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
