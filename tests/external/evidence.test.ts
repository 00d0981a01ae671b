/**
 * Worked example 8 of the model: a drop-shoulder sweater that fits classic, alone and beside a tape, on a prior that is stated in full (medians, slopes on the
 * logarithm of the chest, residual standard deviations). All in mm.
 */
import { describe, expect, it } from 'vitest';
import {
  compareWith,
  condition,
  inMillimetres,
  updateByObservations,
  type BodyDimension,
  type BodyProfile,
  type LogGaussian,
  type Observation,
} from '#body';
import { rulesWith, sweaterEvidence } from '#fit';
import { adviceOn, bodyOf, fabricOf, garmentOf, mm } from '../support/fit-samples.ts';

/** Median, slope on log chest, residual standard deviation of the logarithm. */
const PRIOR = {
  'chest-girth': [905, 1, 0],
  'hip-girth': [965, 0.64, 0.043],
  'scye-depth': [185, 0.42, 0.071],
  'neck-base-girth': [346, 0.4, 0.038],
  'wrist-girth': [151, 0.33, 0.04],
  'hand-girth': [186, 0.22, 0.043],
  'head-girth': [546, 0.11, 0.026],
  'shoulder-girth': [1026, 0.59, 0.03],
  'scye-girth': [371, 0.68, 0.04],
  'upper-arm-girth': [291, 0.96, 0.05],
  'across-back': [393, 0.45, 0.05],
  'back-waist-length': [437, 0.13, 0.05],
  'nape-to-cuff': [732, 0.3, 0.03],
  'underarm-length': [430, 0.12, 0.04],
} as const;
const CHEST_SD = 0.1;

const names = Object.keys(PRIOR);
const rows = Object.values(PRIOR);
const woman: LogGaussian = {
  names,
  mean: rows.map(([median]) => Math.log(median)),
  covariance: rows.flatMap(([, slope, own], i) =>
    rows.map(([, other], j) => slope * other * CHEST_SD ** 2 + (i === j ? own ** 2 : 0)),
  ),
};

/** The band of classic ease, 50 to 100, evenly. */
const CLASSIC = { name: 'ease', mean: 75, sd: 50 / Math.sqrt(12) };
const [T, ORDINARY] = [7, 3];
const FLAT = 431.8;
/** u of a width ±15 and of other measures ±20 (JCGM 100:2008, 4.3.7). */
const [WIDTH_U, OTHER_U] = [15 / Math.sqrt(3), 20 / Math.sqrt(3)];
/** Nothing is said of its regions: every τ is half as large again. */
const UNSAID = 1.5;
const panel = (2 * FLAT - (4 - Math.PI) * T) / 2;

const observation = (id: string, rest: Omit<Observation, 'id' | 'source' | 'u'> & { u?: number }): Observation => ({
  id,
  source: 'sweater',
  u: OTHER_U,
  ...rest,
});
const SWEATER: readonly Observation[] = [
  observation('chest-width', {
    dimensions: { 'chest-girth': 1 },
    hidden: { ease: 1 },
    constant: 4 * (T - ORDINARY),
    observed: 2 * FLAT,
    tau: 0,
    u: 2 * WIDTH_U,
  }),
  observation('sleeve-top-width', {
    dimensions: { 'scye-depth': 1 },
    hidden: { ease: 0.1 },
    constant: 8 + 25 + (Math.PI / 2) * (T - ORDINARY),
    observed: 177.8,
    tau: UNSAID * 20,
  }),
  observation('sleeve-length', {
    dimensions: { 'nape-to-cuff': 1 },
    hidden: {},
    constant: 0,
    observed: panel / 2 + 482.6,
    tau: UNSAID * 20,
  }),
];

describe('worked example 8', () => {
  it('is what the sweater’s own measures tell', () => {
    const flat = (value: number, u: number) => ({ value, u, how: 'home' }) as const;
    const { ease, observations } = sweaterEvidence(
      {
        name: 'sweater',
        construction: 'drop-shoulder',
        values: {
          'chest-width': flat(FLAT, WIDTH_U),
          'sleeve-length': flat(482.6, OTHER_U),
          'sleeve-top-width': flat(177.8, OTHER_U),
        },
        sleeveFrom: 'seam',
        sleeve: 'long',
        title: '',
        thicknessU: 0.3,
        wornStretched: false,
        thicknessMm: T,
        layer: null,
        fits: 'classic',
        neckline: null,
        wears: {},
      },
      { sized: rulesWith({}), backWaist: null, neckBase: null },
    );
    expect([ease.mean, ease.sd]).toEqual([CLASSIC.mean, CLASSIC.sd]);
    expect(observations.map(({ id }) => id)).toEqual(SWEATER.map(({ id }) => id));
    observations.forEach((one, i) => {
      for (const part of ['constant', 'observed', 'tau', 'u'] as const)
        expect(one[part]).toBeCloseTo(SWEATER[i]![part], 9);
      expect(one.dimensions).toEqual(SWEATER[i]!.dimensions);
      expect(Object.values(one.hidden)).toEqual(Object.values(SWEATER[i]!.hidden));
    });
  });

  it.each([
    ['chest-girth', 781.0, 21.4],
    ['ease', 71.1, 14.1],
    ['hip-girth', 878.1, 40.8],
    ['scye-depth', 168.6, 11.4],
    ['nape-to-cuff', 699.3, 18.0],
    ['across-back', 367.8, 18.9],
    ['neck-base-girth', 326.2, 12.9],
    ['hand-girth', 180.1, 7.8],
    ['head-girth', 537.2, 14.1],
  ])('a sweater alone: %s %d ± %d', (name, value, u) => {
    const { values } = inMillimetres(updateByObservations(woman, [CLASSIC], SWEATER));
    expect(Math.abs(values[name]!.value - value)).toBeLessThan(0.1);
    expect(Math.abs(values[name]!.u - u)).toBeLessThan(0.1);
  });

  describe('as the sweater, a crocheted drop shoulder with a V, t 7.0', () => {
    const posterior = inMillimetres(updateByObservations(woman, [CLASSIC], SWEATER));
    const row = (name: string) => posterior.matrix[posterior.names.indexOf(name)]!;
    const body: BodyProfile = {
      ...bodyOf({}),
      values: Object.fromEntries(
        names.map((name) => [
          name,
          { ...posterior.values[name]!, how: 'estimated', from: { code: 'assumed', params: {} } },
        ]),
      ),
      covariance: { names: names as BodyDimension[], matrix: names.map((name) => row(name).slice(0, names.length)) },
    };
    const garment = garmentOf(
      { 'chest-width': FLAT, 'sleeve-length': 482.6, 'sleeve-top-width': 177.8 },
      {
        thicknessMm: T,
        fits: 'classic',
        ease: {
          ...posterior.values['ease']!,
          covariances: Object.fromEntries(names.map((name, place) => [name, row('ease')[place]!])),
        },
      },
    );
    const advice = adviceOn({
      body,
      garment,
      fabric: fabricOf(T, { craft: 'crochet' }),
      design: { basis: 'both', hem: null, neckline: 'v', ease: { as: 'garment', changeMm: 0 } },
    });

    it.each([
      ['chest-width', 431.8],
      ['hem-width', 459.6],
      ['back/width', 428.8],
      ['armhole-depth', 182.2],
      ['sleeve-length', 482.6],
      ['centre-back-length', 578.7],
      ['band-depth', 28.0],
      ['neck-width', 128.8],
      ['front-neck-depth', 159.0],
      ['front/front-neck-depth', 235.7],
      ['cuff-width', 104.6],
    ])('%s is %d', (path, value) => {
      expect(Math.abs(mm(advice, path) - value)).toBeLessThan(0.1);
    });

    it('fails no check', () => {
      expect(advice.checks.filter(({ verdict }) => verdict === 'fails')).toEqual([]);
    });
  });

  /** The chest at 900 ± 15 by the tape. */
  const { mean, covariance } = conditioned(woman, 'chest-girth', 900, 15);
  const taped: LogGaussian = { names, mean, covariance };

  it('with a tape of 900 ± 15 the width lies 127.5 from what is expected, 2u 53.9', () => {
    const { comparisons } = compareWith(taped, [CLASSIC], SWEATER);
    const width = comparisons.find(({ id }) => id === 'chest-width')!;
    expect(Math.abs(width.difference + 127.5)).toBeLessThan(0.1);
    expect(Math.abs(2 * width.u - 53.9)).toBeLessThan(0.1);
  });

  it('where the ease may then be anything: chest 899.1, ease −52.4', () => {
    const { values } = inMillimetres(updateByObservations(taped, [{ ...CLASSIC, sd: 1000 }], SWEATER));
    expect(Math.abs(values['chest-girth']!.value - 899.1)).toBeLessThan(0.1);
    expect(Math.abs(values['ease']!.value + 52.4)).toBeLessThan(0.1);
  });
});

/** A prior given a tape of one dimension; the dimension itself included. */
function conditioned({ names, mean, covariance }: LogGaussian, name: string, value: number, u: number) {
  const n = names.length;
  return condition(
    { n, mean, covariance },
    [names.indexOf(name)],
    [Math.log(value)],
    [(u / value) ** 2],
    names.map((_, i) => i),
  );
}
