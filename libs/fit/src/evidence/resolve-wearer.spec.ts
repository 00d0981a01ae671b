import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS, loadBodyModel, type BodyMeasure, type Figure } from '#body';
import { EASE_CATEGORIES, resolveGarment, type Garment, type GarmentDimension } from '#garment';
import { rulesWith } from '../design/rules.ts';
import { resolveWearer, type WearerBody } from './resolve-wearer.ts';

const model = await loadBodyModel();

const body = (measures: readonly BodyMeasure[], rest: Partial<WearerBody> = {}): WearerBody => ({
  figure: 'woman',
  ageYears: null,
  estimate: true,
  measures,
  ...rest,
});
const chestOf = (value: number): BodyMeasure => ({ name: 'chest-girth', value, how: 'home' });
const garment = (measures: Partial<Record<GarmentDimension, number>>, rest: Partial<Garment> = {}) =>
  resolveGarment({
    title: '',
    construction: 'set-in',
    measures: Object.entries(measures).map(([name, value]) => ({ name: name as GarmentDimension, value, how: 'home' })),
    thicknessMm: 3,
    thicknessU: 0.3,
    layer: null,
    wornStretched: false,
    fits: null,
    neckline: null,
    sleeve: 'long',
    wears: {},
    ...rest,
  });
const wearer = (given: WearerBody | null, ...garments: readonly ReturnType<typeof garment>[]) =>
  resolveWearer(given, garments, rulesWith({}), model, BODY_DIMENSIONS);

describe('a wearer', () => {
  it('of whom nothing is known has no values', () => {
    expect(wearer(null).body.values).toEqual({});
    expect(wearer(body([])).body.values).toEqual({});
  });

  it('known by her sweater alone has every value, from that sweater', () => {
    const { values } = wearer(null, garment({ 'chest-width': 500 }, { title: 'The grey one' })).body;
    expect(values['hip-girth']?.from).toMatchObject({ code: 'evidence', params: { sources: ['The grey one'] } });
    // 1000 − 75 and what people's chests say beside it.
    expect(Math.abs(values['chest-girth']!.value - 925)).toBeLessThan(25);
  });

  it('keeps what was not measured unknown where nothing is to be estimated', () => {
    const given = body([chestOf(940)], { estimate: false });
    const { body: found, garments } = wearer(given, garment({ 'chest-width': 507.5 }));
    expect(Object.keys(found.values)).toEqual(['chest-girth']);
    expect(Math.abs(garments[0]!.ease.value - 75)).toBeLessThan(10);
  });

  it('has the ease of each sweater, with its covariances', () => {
    const { garments } = wearer(
      body([chestOf(940)]),
      garment({ 'chest-width': 507.5 }),
      garment({ 'chest-width': 530 }),
    );
    const [one, other] = garments.map(({ ease }) => ease);
    expect(Math.abs(one!.value - 75)).toBeLessThan(10);
    expect(other!.value - one!.value).toBeGreaterThan(30);
    expect(one!.u).toBeLessThan(30);
    expect(one!.covariances['chest-girth']).toBeLessThan(0);
  });

  it('is asked about a sweater that contradicts the tape, by its name or number', () => {
    const small = garment({ 'chest-width': 400 }, { fits: 'classic' });
    const asked = (...garments: readonly ReturnType<typeof garment>[]) =>
      wearer(body([chestOf(940)]), ...garments).contradictions.flatMap((one) =>
        one.between === 'tape' ? [one.observation.source] : [],
      );
    expect(asked(garment({ 'chest-width': 507.5 }), small)).toEqual(['2']);
    expect(asked({ ...small, title: 'Red' })).toEqual(['Red']);
  });

  it('is asked nothing about a measure that was confirmed', () => {
    const small = garment({ 'chest-width': 400 }, { fits: 'classic' });
    const confirmed = { ...small, values: { 'chest-width': { ...small.values['chest-width']!, confirmed: true } } };
    expect(wearer(body([chestOf(940)]), confirmed).contradictions).toEqual([]);
  });
});

describe('a body along one measure of a sweater', () => {
  const grows = {
    'chest-width': ['chest-girth', 'hip-girth', 'upper-arm-girth', 'shoulder-girth'],
    'hem-width': ['hip-girth', 'chest-girth'],
    'cuff-width': ['wrist-girth', 'upper-arm-girth'],
    'sleeve-length': ['nape-to-cuff'],
    'cross-back-width': ['across-back'],
  } as const;
  const from = {
    'chest-width': 390,
    'hem-width': 390,
    'cuff-width': 70,
    'sleeve-length': 380,
    'cross-back-width': 320,
  };
  const names = fc.constantFrom(...(Object.keys(grows) as (keyof typeof grows)[]));
  const fits = fc.constantFrom(null, ...EASE_CATEGORIES);

  it('moves smoothly, and upwards with it', () => {
    fc.assert(
      fc.property(names, fits, fc.constantFrom<Figure>('woman', 'man', 'unsaid'), (name, how, figure) => {
        // A factor of 2.2 covers chests of 700 to 1650.
        const ratio = 2.2 ** (1 / 40);
        const most = name === 'sleeve-length' || name === 'cross-back-width' ? 20 : 40;
        const values = Array.from({ length: most }, (_, step) => {
          const one = garment({ [name]: from[name] * ratio ** step }, { fits: how });
          return wearer(body([], { figure }), one).body.values;
        });
        values.slice(1).forEach((now, step) => {
          for (const dimension of grows[name]) {
            const speed = Math.log(now[dimension]!.value / values[step]![dimension]!.value) / Math.log(ratio);
            expect(speed, `${dimension} by ${name}, ${step}`).toBeGreaterThan(0);
            expect(speed).toBeLessThan(3);
          }
        });
      }),
      { numRuns: 30 },
    );
  });
});

describe('without the body model', () => {
  const alone = (given: WearerBody | null) =>
    resolveWearer(given, [garment({ 'chest-width': 507.5 })], rulesWith({}), null, BODY_DIMENSIONS);

  /** 1015 − 940. */
  it('a sweater’s ease is what the chest leaves', () => {
    expect(alone(body([chestOf(940)])).garments[0]!.ease.value).toBeCloseTo(75, 9);
  });

  it('and what sweaters usually have, where no chest is known', () => {
    expect(alone(null).garments[0]!.ease).toMatchObject({ value: 75, u: 60 });
  });
});

describe('a child', () => {
  it('of whom a sweater alone is known has its size', () => {
    const { values } = wearer(body([], { figure: 'child' }), garment({ 'chest-width': 350 })).body;
    expect(values['chest-girth']!.value).toBeGreaterThan(580);
    expect(values['chest-girth']!.value).toBeLessThan(690);
    expect(values['nape-to-cuff']).toBeDefined();
  });
});
