import fc from 'fast-check';
import { DomainError, HOWS } from '#measure';
import { describe, expect, it } from 'vitest';
import { GARMENT_DIMENSIONS } from './garment-dimension.ts';
import { GARMENT_LIMITS } from './garment-limits.ts';
import { garmentProblems } from './garment-problems.ts';
import { CONSTRUCTIONS, type Garment, type GarmentMeasure } from './garment.ts';
import { resolveGarment } from './resolve-garment.ts';

const CHEST: GarmentMeasure = { name: 'chest-width', value: 510, how: 'home' };
const CARDIGAN: Garment = {
  construction: 'set-in',
  measures: [CHEST],
  thicknessMm: 3,
  thicknessU: 0.3,
  layer: null,
  title: '',
  wornStretched: false,
  fits: null,
  neckline: null,
  sleeve: 'long',
  wears: { chest: 'close' },
};
const having = (...measures: GarmentMeasure[]): Garment => ({ ...CARDIGAN, measures });

describe('resolveGarment', () => {
  it('puts each measure under its name and fills in its uncertainty', () => {
    const { values, ...rest } = resolveGarment(having(CHEST, { name: 'cuff-width', value: 95, how: 'trained', u: 2 }));
    expect(values['chest-width']).toEqual({ value: 510, u: 15 / Math.sqrt(3), how: 'home' });
    expect(values['cuff-width']).toEqual({ value: 95, u: 2, how: 'trained' });
    expect(values['hem-width']).toBeUndefined();
    const { measures: _, ...kept } = CARDIGAN;
    expect(rest).toEqual({ ...kept, sleeveFrom: 'seam' });
  });

  it('takes a sleeve from its seam unless it says the centre back', () => {
    const sleeve: GarmentMeasure = { name: 'sleeve-length', value: 700, how: 'home', from: 'centre-back' };
    expect(resolveGarment(having(sleeve)).sleeveFrom).toBe('centre-back');
    expect(resolveGarment(having({ name: 'sleeve-length', value: 450, how: 'home' })).sleeveFrom).toBe('seam');
    expect(resolveGarment(having(CHEST, sleeve)).sleeveFrom).toBe('centre-back');
  });

  it('keeps every value as it was given, whatever it is within the limits', () => {
    const measures = fc.subarray([...GARMENT_DIMENSIONS]).chain((names) =>
      fc.tuple(
        ...names.map((name) => {
          const [min, max] = GARMENT_LIMITS[name];
          return fc.double({ min, max, noNaN: true }).map((value): GarmentMeasure => ({ name, value, how: 'home' }));
        }),
      ),
    );
    fc.assert(
      fc.property(measures, (given) => {
        const { values } = resolveGarment(Object.freeze(having(...given)));
        expect(Object.keys(values)).toHaveLength(given.length);
        for (const { name, value } of given) expect(values[name]?.value).toBe(value);
      }),
    );
  });

  it('takes a garment with nothing measured', () => {
    expect(resolveGarment(having()).values).toEqual({});
  });
});

describe('garmentProblems', () => {
  it.each([
    [having(CHEST, CHEST), 'measured-twice', '/measures/1/name'],
    [having({ ...CHEST, value: 0 }), 'measure-out-of-range', '/measures/0/value'],
    [having({ ...CHEST, value: -510 }), 'measure-out-of-range', '/measures/0/value'],
    [having({ ...CHEST, value: NaN }), 'measure-out-of-range', '/measures/0/value'],
    [having({ ...CHEST, value: 1e308 }), 'measure-out-of-range', '/measures/0/value'],
    [having({ ...CHEST, u: -1 }), 'uncertainty-out-of-range', '/measures/0/u'],
    [having({ ...CHEST, from: 'seam' }), 'sleeve-from-misplaced', '/measures/0/from'],
    [having({ ...CHEST, name: 'toString' as 'chest-width' }), 'unknown-dimension', '/measures/0/name'],
    [having({ ...CHEST, how: 'guessed' as 'home' }), 'unknown-how', '/measures/0/how'],
    [{ ...CARDIGAN, construction: 'kimono' as 'raglan' }, 'unknown-construction', '/construction'],
    [{ ...CARDIGAN, thicknessMm: 0 }, 'thickness-out-of-range', '/thicknessMm'],
    [{ ...CARDIGAN, thicknessU: Infinity }, 'uncertainty-out-of-range', '/thicknessU'],
    [
      { ...CARDIGAN, layer: { thicknessMm: -1, u: 0, sleeves: 'long' } },
      'thickness-out-of-range',
      '/layer/thicknessMm',
    ],
    [{ ...CARDIGAN, layer: { thicknessMm: 1, u: NaN, sleeves: 'long' } }, 'uncertainty-out-of-range', '/layer/u'],
  ] as const)('%j: %s', (garment, code, pointer) => {
    const [problem, ...others] = garmentProblems(garment);
    expect(problem).toBeInstanceOf(DomainError);
    expect(problem).toMatchObject({ code, pointer });
    expect(others).toEqual([]);
    expect(() => resolveGarment(garment)).toThrow(expect.objectContaining({ code, pointer }));
  });

  it('says what was given and what would be right', () => {
    const paramsOf = (garment: Garment) => garmentProblems(garment).map(({ params }) => params);
    expect(paramsOf(having({ ...CHEST, value: 59 }))).toEqual([{ valueMm: 59, smallestMm: 60, largestMm: 3000 }]);
    expect(paramsOf(having({ ...CHEST, u: 501 }))).toEqual([{ valueMm: 501, smallestMm: 0, largestMm: 500 }]);
    expect(paramsOf(having(CHEST, CHEST))).toEqual([{ name: 'chest-width' }]);
    expect(paramsOf(having({ ...CHEST, from: 'seam' }))).toEqual([{ name: 'chest-width' }]);
    expect(paramsOf(having({ ...CHEST, name: 'toString' as 'chest-width' }))).toEqual([
      { of: 'garment', name: 'toString', known: GARMENT_DIMENSIONS },
    ]);
    expect(paramsOf(having({ ...CHEST, how: 'guessed' as 'home' }))).toEqual([
      { name: 'chest-width', how: 'guessed', known: HOWS },
    ]);
    expect(paramsOf({ ...CARDIGAN, construction: 'kimono' as 'raglan' })).toEqual([
      { construction: 'kimono', known: CONSTRUCTIONS },
    ]);
  });

  it('takes both ends of every limit, and nothing beyond them', () => {
    for (const name of GARMENT_DIMENSIONS) {
      const [least, most] = GARMENT_LIMITS[name];
      for (const value of [least, most])
        expect(garmentProblems(having({ name, value, how: 'home' })), name).toEqual([]);
      for (const value of [least - 1, most + 1])
        expect(garmentProblems(having({ name, value, how: 'home' })), name).toHaveLength(1);
    }
    const layer = (thicknessMm: number, u: number) => ({
      ...CARDIGAN,
      layer: { thicknessMm, u, sleeves: 'long' } as const,
    });
    for (const sound of [
      { ...CARDIGAN, thicknessMm: 0.2 },
      { ...CARDIGAN, thicknessMm: 40, thicknessU: 20 },
      { ...CARDIGAN, thicknessU: 0 },
      layer(0, 0),
      layer(40, 20),
      having({ ...CHEST, u: 500 }),
      having({ name: 'sleeve-length', value: 450, how: 'home', from: 'seam' }),
    ])
      expect(garmentProblems(sound)).toEqual([]);
    for (const wrong of [
      { ...CARDIGAN, thicknessMm: 0.19 },
      { ...CARDIGAN, thicknessMm: 40.1 },
      { ...CARDIGAN, thicknessU: 20.1 },
      layer(40.1, 0),
      layer(1, 20.1),
    ])
      expect(garmentProblems(wrong)).toHaveLength(1);
  });

  it('lists them all at once', () => {
    const wrong = { ...having({ ...CHEST, value: 0 }, { ...CHEST, u: -1 }), thicknessMm: 99 };
    expect(garmentProblems(wrong).map(({ pointer }) => pointer)).toEqual([
      '/measures/0/value',
      '/measures/1/u',
      '/measures/1/name',
      '/thicknessMm',
    ]);
  });

  it('has none for a flat width typed as a girth: that is a question', () => {
    expect(garmentProblems(having({ ...CHEST, value: 1020 }))).toEqual([]);
  });
});
