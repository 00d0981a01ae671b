import { describe, expect, it } from 'vitest';
import type { BentTerm, Observation } from '#body';
import { defaultGarmentU, type GarmentDimension } from '#garment';
import { rulesWith } from '../design/rules.ts';
import { rulesAtSize } from '../design/scale.ts';
import type { Sweater, WearerSoFar } from './sweater.ts';
import { sweaterEvidence } from './sweater-evidence.ts';

const WEARER: WearerSoFar = { sized: rulesWith({}), backWaist: 430, neckBase: 360 };
const measured = (values: Partial<Record<GarmentDimension, number>>): Sweater['values'] =>
  Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      { value, u: defaultGarmentU(name as GarmentDimension, 'home'), how: 'home' },
    ]),
  );
const SWEATER: Sweater = {
  name: 'grey',
  construction: 'set-in',
  values: measured({}),
  sleeveFrom: 'seam',
  sleeve: 'long',
  title: '',
  thicknessU: 0.3,
  wornStretched: false,
  thicknessMm: 3,
  layer: null,
  fits: null,
  neckline: null,
  wears: {},
};
const evidence = (
  values: Partial<Record<GarmentDimension, number>>,
  rest: Partial<Sweater> = {},
  wearer: WearerSoFar = WEARER,
) => sweaterEvidence({ ...SWEATER, ...rest, values: measured(values) }, wearer);
const only = (...args: Parameters<typeof evidence>): Observation => {
  const { observations } = evidence(...args);
  expect(observations).toHaveLength(1);
  return observations[0]!;
};
const idsOf = (...args: Parameters<typeof evidence>) => evidence(...args).observations.map(({ id }) => id);

describe('the hidden ease of a sweater', () => {
  it.each([
    [null, 75, 60],
    ['very-close', -75, 50 / Math.sqrt(12)],
    ['close', 0, 50 / Math.sqrt(12)],
    ['classic', 75, 50 / Math.sqrt(12)],
    ['loose', 125, 50 / Math.sqrt(12)],
    ['oversized', 200, 100 / Math.sqrt(12)],
  ] as const)('that fits %s is %d ± %d', (fits, mean, sd) => {
    expect(evidence({}, { fits }).ease).toEqual({ name: 'grey', mean, sd });
  });

  it('is smaller for a child by half of its scale', () => {
    const { ease } = evidence({}, {}, { ...WEARER, sized: rulesAtSize(rulesWith({}), 0.6) });
    expect([ease.mean, ease.sd]).toEqual([75 * 0.8, 60 * 0.8]);
  });
});

describe('what a measure tells', () => {
  it('chest width: the chest, the ease, the layer and the fabric', () => {
    const layer = { thicknessMm: 2, u: 0.5, sleeves: 'none' } as const;
    const one = only({ 'chest-width': 500 }, { thicknessMm: 5, layer });
    expect(one).toMatchObject({ dimensions: { 'chest-girth': 1 }, hidden: { grey: 1 }, observed: 1000, tau: 0 });
    expect(one.constant).toBeCloseTo(4 * Math.PI + 8, 9); // 2π·2 + 4(5 − 3)
    expect(one.u).toBeCloseTo((2 * 15) / Math.sqrt(3), 9);
    expect(one.anchors).toBe('grey');
  });

  it('hem width: the hip with at most 25 of the ease, where it reaches the hip', () => {
    const one = only({ 'hem-width': 510 });
    expect(one).toMatchObject({
      dimensions: { 'hip-girth': 1 },
      hidden: { grey: { at: 25, below: 1, above: 0 } },
      observed: 1020,
      tau: 1.5 * 40,
    });
    // 560 less a back neck of 360/18 = 20 is 540, which is 430 + 110.
    expect(idsOf({ 'hem-width': 510, 'shoulder-to-hem': 560 })).toEqual(['hem-width']);
    expect(idsOf({ 'hem-width': 510, 'shoulder-to-hem': 540 })).toEqual([]);
    expect(idsOf({ 'hem-width': 510, 'shoulder-to-hem': 540 }, {}, { ...WEARER, backWaist: null })).toHaveLength(1);
  });

  it('cross back: the across back, of a set-in alone', () => {
    expect(only({ 'cross-back-width': 410 })).toMatchObject({
      dimensions: { 'across-back': 1 },
      hidden: { grey: 0.12 },
      observed: 410,
      tau: 1.5 * 15,
    });
    for (const construction of ['drop-shoulder', 'squared-drop', 'raglan'] as const)
      expect(idsOf({ 'cross-back-width': 410 }, { construction })).toEqual([]);
  });

  it.each([
    ['set-in', 'armhole-depth', 8],
    ['drop-shoulder', 'armhole-depth', 33],
    ['squared-drop', 'armhole-depth', 23],
    ['drop-shoulder', 'sleeve-top-width', 33],
    ['squared-drop', 'sleeve-top-width', 23],
  ] as const)('%s, %s: the scye depth and %d', (construction, name, constant) => {
    const one = only({ [name]: 210 }, { construction });
    expect(one).toMatchObject({
      id: name,
      dimensions: { 'scye-depth': 1 },
      hidden: { grey: 0.1 },
      constant,
      observed: 210,
    });
  });

  it('a drop’s armhole depth before its sleeve top; a raglan’s armhole depth nothing', () => {
    const both = { 'armhole-depth': 210, 'sleeve-top-width': 205 };
    expect(idsOf(both, { construction: 'drop-shoulder' })).toEqual(['armhole-depth']);
    expect(idsOf({ 'armhole-depth': 210 }, { construction: 'raglan' })).toEqual([]);
  });

  it.each(['set-in', 'raglan'] as const)(
    '%s, sleeve top: the upper arm with half the ease, a fifth below 0',
    (construction) => {
      expect(only({ 'sleeve-top-width': 170 }, { construction })).toMatchObject({
        dimensions: { 'upper-arm-girth': 1 },
        hidden: { grey: { at: 0, below: 0.2, above: 0.5 } },
        observed: 340,
        tau: 45,
      });
    },
  );

  it('cuff width: the wrist, 10, and the layer where its sleeves are long', () => {
    const layer = (sleeves: 'short' | 'long') => ({ thicknessMm: 2, u: 0.5, sleeves });
    expect(only({ 'cuff-width': 95 }, { layer: layer('short') }).constant).toBe(10);
    expect(only({ 'cuff-width': 95 }, { layer: layer('long') }).constant).toBeCloseTo(10 + 4 * Math.PI, 9);
  });

  it('neck width: the neck base’s diameter and 25, of a crew alone', () => {
    expect(idsOf({ 'neck-width': 140 })).toEqual([]);
    const one = only({ 'neck-width': 140 }, { neckline: 'crew' });
    expect(one.dimensions['neck-base-girth']).toBeCloseTo(1 / Math.PI, 12);
    expect(one).toMatchObject({ constant: 25, observed: 140, tau: 30 });
  });
});

describe('a long sleeve is nape to cuff with the way to its seam', () => {
  const long = (values: Partial<Record<GarmentDimension, number>>, rest: Partial<Sweater>) =>
    evidence({ 'sleeve-length': 480, ...values }, rest).observations.find(({ id }) => id === 'sleeve-length');

  it.each([
    ['set-in', { 'cross-back-width': 400 }, 680],
    ['squared-drop', { 'cross-back-width': 400 }, 680],
    ['raglan', { 'neck-width': 150 }, 555],
    // Flat 1000 round, 3 thick: half a mid girth of 1000 − (4 − π)·3, half of that.
    ['drop-shoulder', { 'chest-width': 500 }, 480 + (1000 - (4 - Math.PI) * 3) / 4],
  ] as const)('%s', (construction, values, observed) => {
    const one = long(values, { construction })!;
    expect(one.observed).toBeCloseTo(observed, 9);
    expect(one).toMatchObject({ dimensions: { 'nape-to-cuff': 1 }, hidden: {}, tau: 30 });
  });

  it('a set-in without its cross back: half of the across back and 0.12 of the ease', () => {
    expect(long({}, { construction: 'set-in' })).toMatchObject({
      dimensions: { 'nape-to-cuff': 1, 'across-back': -0.5 },
      hidden: { grey: -0.06 },
      observed: 480,
    });
  });

  it('a squared drop without it: half of panel and across back together', () => {
    const one = long({ 'chest-width': 500 }, { construction: 'squared-drop' })!;
    expect(one.dimensions).toEqual({ 'nape-to-cuff': 1, 'across-back': -0.25 });
    expect(one.observed).toBeCloseTo(480 + (1000 - (4 - Math.PI) * 3) / 8, 9);
  });

  it('from the centre back, as it is; of a sleeve that is not long, or a seam that is not known, nothing', () => {
    expect(long({}, { sleeveFrom: 'centre-back', construction: 'raglan' })!.observed).toBe(480);
    expect(long({}, { construction: 'raglan' })).toBeUndefined();
    expect(long({}, { construction: 'drop-shoulder' })).toBeUndefined();
    expect(long({}, { sleeve: 'short' })).toBeUndefined();
  });
});

describe('how a region wears', () => {
  it('right: its own spread alone; unsaid: half as much again', () => {
    expect(only({ 'cuff-width': 95 }, { wears: { cuff: 'right' } }).tau).toBe(20);
    expect(only({ 'cuff-width': 95 }).tau).toBe(30);
  });

  it('close: its ease is 40 less, roomy: 40 more', () => {
    expect(only({ 'cuff-width': 95 }, { wears: { cuff: 'close' } }).constant).toBe(10 - 0.15 * 40);
    expect(only({ 'chest-width': 500 }, { wears: { chest: 'roomy' } }).constant).toBe(40);
  });

  it('close at a bent ease: the bend moves with it', () => {
    const at = (one: Observation, e: number) => {
      const { at, below, above } = one.hidden['grey'] as BentTerm;
      return one.constant + below * Math.min(e, at) + above * Math.max(0, e - at);
    };
    const [right, close] = (['right', 'close'] as const).map((hip) => only({ 'hem-width': 500 }, { wears: { hip } }));
    for (const e of [-50, 0, 24, 26, 64, 66, 120]) expect(at(close!, e)).toBeCloseTo(at(right!, e - 40), 9);
  });
});
