import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GarmentDimension } from './garment-dimension.ts';
import { garmentQuestions, type GarmentSlip } from './garment-questions.ts';
import type { Garment } from './garment.ts';
import { resolveGarment } from './resolve-garment.ts';

/** An adult's everyday sweater for a chest of 940, and a four-year-old's cardigan for one of 584. */
const SWEATER = {
  'chest-width': 510,
  'hem-width': 490,
  'shoulder-to-hem': 600,
  'back-neck-depth': 20,
  'front-neck-depth': 75,
  'neck-width': 160,
  'cross-back-width': 400,
  'armhole-depth': 220,
  'sleeve-top-width': 190,
  'sleeve-length': 470,
  'cuff-width': 95,
} as const;
const CHILDS = {
  'chest-width': 340,
  'shoulder-to-hem': 390,
  'neck-width': 130,
  'armhole-depth': 155,
  'sleeve-top-width': 130,
  'sleeve-length': 275,
  'cuff-width': 75,
} as const;

function profile(values: Partial<Record<GarmentDimension, number>>, from: 'seam' | 'centre-back' = 'seam') {
  const garment: Garment = {
    construction: 'set-in',
    measures: Object.entries(values).map(([name, value]) => ({
      name: name as GarmentDimension,
      value,
      how: 'home' as const,
      ...(name === 'sleeve-length' ? { from } : {}),
    })),
    thicknessMm: 3,
    thicknessU: 0.3,
    layer: null,
    title: '',
    wornStretched: false,
    fits: null,
    neckline: null,
    sleeve: 'long',
    wears: {},
  };
  return resolveGarment(garment);
}
const asked = (values: Partial<Record<GarmentDimension, number>>, bodyChestMm: number | null = null) =>
  garmentQuestions(profile(values), bodyChestMm).map(({ name, code, wouldBe }) => [name, code, wouldBe]);

describe('a garment without a slip', () => {
  it.each([
    ['an adult’s', SWEATER, 940],
    ['a child’s', CHILDS, 584],
    [
      'a cropped, wide one',
      { 'chest-width': 640, 'shoulder-to-hem': 430, 'sleeve-length': 400, 'cuff-width': 110 },
      900,
    ],
    ['a close tunic', { 'chest-width': 430, 'shoulder-to-hem': 850, 'sleeve-length': 480, 'cuff-width': 85 }, 880],
    ['the largest size', { 'chest-width': 820, 'shoulder-to-hem': 680, 'armhole-depth': 270, 'cuff-width': 120 }, 1550],
    ['a short-sleeved one', { ...SWEATER, 'sleeve-length': 160 }, 940],
  ])('%s gets no question, with its body or without', (_, values, chest) => {
    expect(asked(values, chest)).toEqual([]);
    expect(asked(values)).toEqual([]);
  });

  it('may have its sleeve measured from the centre back', () => {
    const values = { ...SWEATER, 'sleeve-length': 740 };
    expect(garmentQuestions(profile(values, 'centre-back'), 940)).toEqual([]);
  });
});

describe('a slip against the body', () => {
  it('a girth typed for the flat chest width would become its half', () => {
    const [question] = garmentQuestions(profile({ 'chest-width': 1020 }), 940);
    expect(question).toEqual({
      name: 'chest-width',
      value: 1020,
      code: 'girth-for-width',
      wouldBe: 510,
      params: { name: 'chest-width', smaller: false, comparedWith: 'body' },
    });
  });

  it('inches written as centimetres: 20 for 20 in', () => {
    expect(asked({ 'chest-width': 200 }, 940)).toEqual([['chest-width', 'inches-for-cm', 508]]);
  });

  it('a whole garment in inches written as centimetres is seen by the body, not by itself', () => {
    const small = Object.fromEntries(Object.entries(SWEATER).map(([name, mm]) => [name, mm / 2.54]));
    const questions = asked(small, 940);
    expect(questions.length).toBeGreaterThanOrEqual(7);
    for (const [name, , wouldBe] of questions) expect(wouldBe).toBeCloseTo(SWEATER[name as keyof typeof SWEATER], 9);
    expect(asked(small)).toEqual([]);
  });
});

describe('what a question says', () => {
  const paramsOf = (values: Partial<Record<GarmentDimension, number>>, chest: number | null) =>
    garmentQuestions(profile(values), chest).map(({ params }) => params);

  it('is whether the measure is smaller than expected, and with what it was compared', () => {
    expect(paramsOf({ 'chest-width': 200 }, 940)).toEqual([
      { name: 'chest-width', smaller: true, comparedWith: 'body' },
    ]);
    // A cuff is expected at 0.19 of the chest width: 510 wide, 97.
    expect(paramsOf({ ...SWEATER, 'cuff-width': 190 }, null)).toEqual([
      { name: 'cuff-width', smaller: false, comparedWith: 'garment' },
    ]);
    expect(paramsOf({ ...SWEATER, 'cuff-width': 37 }, null)).toEqual([
      { name: 'cuff-width', smaller: true, comparedWith: 'garment' },
    ]);
  });

  it('is nothing of fewer measures than three, and something of three, in whatever order they were taken', () => {
    const three = { 'cuff-width': 200, 'chest-width': 510, 'hem-width': 490 } as const;
    expect(asked(three)).toEqual([['cuff-width', 'girth-for-width', 100]]);
    expect(asked({ 'cuff-width': 200, 'chest-width': 510 })).toEqual([]);
    // The one that is odd stands in the middle, unless they are sorted.
    expect(asked({ 'chest-width': 510, 'hem-width': 980, 'cuff-width': 95 })).toEqual([
      ['hem-width', 'girth-for-width', 490],
    ]);
  });

  it('counts a sleeve from the centre back as one', () => {
    const sleeve = (mm: number, from: 'seam' | 'centre-back') =>
      garmentQuestions(profile({ 'sleeve-length': mm }, from), 925).map(({ code }) => code);
    // 0.5 to 2 of 500 from the centre back; 0.15 to 1.5 from the seam.
    expect([sleeve(1000, 'centre-back'), sleeve(250, 'centre-back'), sleeve(100, 'seam')]).toEqual([[], [], []]);
    expect([sleeve(240, 'centre-back'), sleeve(1001, 'centre-back')]).toEqual([['inches-for-cm'], ['cm-for-inches']]);
    expect(sleeve(1000, 'seam')).toEqual(['cm-for-inches']);
  });
});

describe('one slip among the measures of a garment', () => {
  const slips: readonly [GarmentDimension, GarmentSlip, number][] = [
    ['chest-width', 'girth-for-width', 2],
    ['hem-width', 'girth-for-width', 2],
    ['sleeve-top-width', 'girth-for-width', 2],
    ['cuff-width', 'girth-for-width', 2],
    ['chest-width', 'half-for-width', 1 / 2],
    ['chest-width', 'inches-for-cm', 1 / 2.54],
    ['shoulder-to-hem', 'inches-for-cm', 1 / 2.54],
    ['armhole-depth', 'inches-for-cm', 1 / 2.54],
    ['chest-width', 'cm-for-inches', 2.54],
    ['sleeve-length', 'cm-for-inches', 2.54],
    ['neck-width', 'cm-for-inches', 2.54],
  ];

  it.each(slips)('%s: %s (× %d) is asked about alone, with its repair', (name, slip, times) => {
    const right = SWEATER[name as keyof typeof SWEATER];
    for (const chest of [940, null]) {
      const [question, ...others] = garmentQuestions(profile({ ...SWEATER, [name]: right * times }), chest);
      expect(question).toMatchObject({ name, code: slip });
      expect(question?.wouldBe).toBeCloseTo(right, 9);
      expect(others).toEqual([]);
    }
  });

  it('never asks about a length whether it was taken round, or on the fold', () => {
    fc.assert(
      fc.property(fc.double({ min: 60, max: 2500, noNaN: true }), (mm) => {
        for (const { code } of garmentQuestions(profile({ 'shoulder-to-hem': mm, 'sleeve-length': mm }), 940))
          expect(['inches-for-cm', 'cm-for-inches']).toContain(code);
      }),
    );
  });

  it('asks at most once a measure, and its repair needs no further question', () => {
    const value = fc.double({ min: 100, max: 1200, noNaN: true });
    fc.assert(
      fc.property(value, value, value, (chest, hem, cross) => {
        const values = { 'chest-width': chest, 'hem-width': hem, 'cross-back-width': cross };
        const questions = garmentQuestions(profile(values), 940);
        expect(new Set(questions.map(({ name }) => name)).size).toBe(questions.length);
        const repaired = { ...values, ...Object.fromEntries(questions.map(({ name, wouldBe }) => [name, wouldBe])) };
        const again = garmentQuestions(profile(repaired), 940).map(({ name }) => name);
        for (const { name } of questions) expect(again).not.toContain(name);
      }),
    );
  });
});

describe('what cannot be told', () => {
  it('two measures without a body do not say which of them is odd', () => {
    expect(asked({ 'chest-width': 1020, 'hem-width': 490 })).toEqual([]);
  });

  it('neck depths have no usual proportion', () => {
    expect(asked({ 'front-neck-depth': 900, 'back-neck-depth': 200 }, 940)).toEqual([]);
  });

  it('changes nothing in the profile', () => {
    const given = profile({ 'chest-width': 1020 });
    const before = structuredClone(given);
    garmentQuestions(given, 940);
    expect(given).toEqual(before);
  });
});
