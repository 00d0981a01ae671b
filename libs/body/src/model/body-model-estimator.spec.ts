import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS, type BodyDimension } from '../body-dimension.ts';
import { defaultU } from '../default-u.ts';
import type { Estimate, EstimatorInput, KnownValue } from '../estimator.ts';
import { bodyModelEstimator } from './body-model-estimator.ts';
import { factorInPlace } from './cholesky.ts';
import { loadBodyModel } from './load-body-model.ts';

const model = await loadBodyModel();
const home = (name: BodyDimension, value: number): KnownValue => ({ name, value, u: defaultU(name, 'home').u });
const woman = (known: readonly KnownValue[], ageYears: number | null = 40): EstimatorInput => ({
  figure: 'woman',
  ageYears,
  known,
});
const sizeM = [home('stature', 1650), home('chest-girth', 940), home('hip-girth', 990)];

function given(input: EstimatorInput, name: BodyDimension): Extract<Estimate, { value: number }> {
  const found = model.estimate(input).estimates.find((one) => one.name === name)!;
  if ('missing' in found) throw new Error(`${name}: ${found.missing.code}`);
  return found;
}

describe('estimates', () => {
  it('are one for every dimension that was not known, and say from what', () => {
    const { estimates, from } = model.estimate(woman(sizeM));
    const known = sizeM.map(({ name }) => name);
    expect(estimates.map(({ name }) => name)).toEqual(BODY_DIMENSIONS.filter((name) => !known.includes(name)));
    expect(from).toEqual({ code: 'body-model', params: { known, version: 2 } });
  });

  it('are the same where only some are asked for, and none but those', () => {
    const wanted = fc.uniqueArray(fc.constantFrom(...BODY_DIMENSIONS));
    const figure = fc.constantFrom('woman', 'man', 'unsaid');
    fc.assert(
      fc.property(wanted, figure, (some, whose) => {
        const input = { ...woman(sizeM, 70), figure: whose } as const;
        const [all, few] = [model.estimate(input), model.estimate({ ...input, wanted: some })];
        expect(few.estimates).toEqual(all.estimates.filter(({ name }) => some.includes(name)));
        const cell = ({ names, matrix }: typeof all.covariance, a: BodyDimension, b: BodyDimension) =>
          matrix[names.indexOf(a)]![names.indexOf(b)];
        for (const a of few.covariance.names)
          for (const b of few.covariance.names) expect(cell(few.covariance, a, b)).toBe(cell(all.covariance, a, b));
      }),
      { numRuns: 40 },
    );
  });

  it('are of this body alone, whoever was asked about before', () => {
    const asked = { ...woman(sizeM, 70), figure: 'unsaid' } as const;
    const first = model.estimate(asked);
    model.estimate(woman([home('stature', 1900)], null));
    model.estimate({ ...asked, figure: 'man', ageYears: 20 });
    expect(model.estimate(asked)).toEqual(first);
  });

  /** Craft Yarn Council, Standards & Guidelines, woman M (from memory): cross back 15½–16 in, nape to cuff 29–29½ in, arm to underarm 17 in, armhole depth 7–7½ in. */
  it.each([
    ['across-back', 394, 406],
    ['nape-to-cuff', 737, 749],
    ['underarm-length', 432, 432],
    ['scye-depth', 178, 190],
    ['back-waist-length', 438, 438],
    ['upper-arm-girth', 279, 279],
  ] as const)('of %s hold the trade’s size M within their 90 %%', (name, low, high) => {
    const estimate = given(woman(sizeM), name);
    expect(estimate.low).toBeLessThan(low);
    expect(estimate.high).toBeGreaterThan(high);
  });

  it('of across back and nape to cuff lie at the trade’s size M itself', () => {
    expect(given(woman(sizeM), 'across-back').value).toBeGreaterThan(394);
    expect(given(woman(sizeM), 'across-back').value).toBeLessThan(406);
    expect(given(woman(sizeM), 'nape-to-cuff').value / 743).toBeCloseTo(1, 1);
  });

  it('of the back waist admit all three places that are called the waist: 367, 425 and 438', () => {
    const { low, high } = given(woman(sizeM), 'back-waist-length');
    expect([low < 367, high > 438]).toEqual([true, true]);
  });

  it('are there with nothing measured, and widest then', () => {
    const nothing = given(woman([]), 'upper-arm-girth');
    expect(nothing.u).toBeGreaterThan(given(woman([home('chest-girth', 940)]), 'upper-arm-girth').u);
    expect(model.estimate(woman([])).from.params).toMatchObject({ known: [] });
  });

  it('of the waist rise with age and are widest where no age is said', () => {
    const at = (age: number | null) =>
      given(woman([home('stature', 1640), home('weight', 66_000)], age), 'waist-girth');
    expect(at(30).value).toBeLessThan(at(50).value);
    expect(at(50).value).toBeLessThan(at(70).value);
    expect(at(null).u).toBeGreaterThan(at(70).u);
  });

  it('lean less on a coarse tape', () => {
    const arm = (u: number) => given(woman([{ name: 'chest-girth', value: 1080, u }]), 'upper-arm-girth');
    expect(arm(80).value).toBeLessThan(arm(10).value);
    expect(arm(80).u).toBeGreaterThan(arm(10).u);
  });

  it('of a body whose sex was not said lie between the two, and are wider', () => {
    const known = [home('stature', 1700)];
    const of = (figure: 'woman' | 'man' | 'unsaid') => given({ figure, ageYears: 40, known }, 'neck-base-girth');
    expect(of('unsaid').value).toBeGreaterThan(of('woman').value);
    expect(of('unsaid').value).toBeLessThan(of('man').value);
    expect(of('unsaid').u).toBeGreaterThan(Math.max(of('woman').u, of('man').u));
  });

  it('follow the sex that the measures themselves tell', () => {
    const known = [
      home('stature', 1790),
      home('weight', 80_000),
      home('neck-base-girth', 430),
      home('hand-girth', 218),
    ];
    const unsaid = given({ figure: 'unsaid', ageYears: 40, known }, 'shoulder-girth');
    expect(unsaid.value / given({ figure: 'man', ageYears: 40, known }, 'shoulder-girth').value).toBeCloseTo(1, 2);
  });
});

describe('a body outside the surveys', () => {
  const marked = (input: EstimatorInput) =>
    model.estimate(input).estimates.flatMap((one) => ('value' in one && one.outsideSurveys ? [one.name] : []));

  it.each([
    ['stature', 1900],
    ['stature', 1400],
    ['chest-girth', 1300],
    ['hip-girth', 1650],
    ['weight', 220_000],
    ['weight', 35_000],
  ] as const)('with %s %d is answered in full, and every estimate is marked', (name, value) => {
    const { estimates } = model.estimate(woman([home(name, value)]));
    expect(marked(woman([home(name, value)]))).toEqual(BODY_DIMENSIONS.filter((one) => one !== name));
    expect(estimates.every((one) => 'value' in one)).toBe(true);
  });

  it('is marked at what soldiers alone were measured at, where civilians of that weight and age were', () => {
    const heavy = woman([home('stature', 1640), home('weight', 118_000)], 66);
    const names = marked(heavy);
    expect(names).toContain('neck-base-girth');
    for (const name of ['waist-girth', 'hip-girth', 'upper-arm-girth'] as const) expect(names).not.toContain(name);
  });

  it('is none where the body is like those surveyed', () => {
    expect(marked(woman(sizeM))).toEqual([]);
  });

  it.each([12, 15, 17, 58, 75, 90, 120])('of %d years is answered in full', (age) => {
    const { estimates } = model.estimate(woman(sizeM, age));
    expect(estimates.every((one) => 'value' in one && one.u > 0)).toBe(true);
  });

  it('is answered more widely the further it is from the surveys', () => {
    const u = (chest: number) => given(woman([home('chest-girth', chest)]), 'scye-depth').u;
    expect(u(1200)).toBeGreaterThan(u(1000));
    expect(u(1650)).toBeGreaterThan(u(1200));
    const neck = (age: number) => given(woman(sizeM, age), 'neck-base-girth').u;
    expect(neck(75)).toBeGreaterThan(neck(58));
  });

  it('has an upper arm that thins with age: at 80 a man’s is about 24 mm below what it is at 45', () => {
    const arm = (ageYears: number) =>
      given({ figure: 'man', ageYears, known: [home('stature', 1750), home('weight', 86_000)] }, 'upper-arm-girth')
        .value;
    expect(arm(45) - arm(80)).toBeGreaterThan(18);
    expect(arm(45) - arm(80)).toBeLessThan(32);
    expect(arm(60)).toBeGreaterThan(arm(70));
  });
});

/** Girths and the lengths that grow with a body; a heavier body has no longer arm. */
const GROWING = BODY_DIMENSIONS.filter((name) => name.endsWith('-girth'));
const STEPS = 120;

describe('estimates along one measure', () => {
  const along = {
    'chest-girth': [700, 1650],
    'waist-girth': [550, 1650],
    'hip-girth': [750, 1650],
    'upper-arm-girth': [200, 560],
    weight: [15 * 1.7 ** 2 * 1000, 62 * 1.7 ** 2 * 1000],
  } as const;
  const others = fc.record({
    figure: fc.constantFrom('woman', 'man', 'unsaid'),
    ageYears: fc.option(fc.integer({ min: 17, max: 90 }), { nil: null }),
    stature: fc.option(fc.integer({ min: 1500, max: 1900 }), { nil: null }),
  });
  const name = fc.constantFrom(...(Object.keys(along) as (keyof typeof along)[]));

  it('move smoothly, girths upwards, and grow no surer beyond the surveys', () => {
    fc.assert(
      fc.property(others, name, ({ figure, ageYears, stature }, along_) => {
        const [low, high] = along[along_];
        const ratio = (high / low) ** (1 / STEPS);
        const answers = Array.from({ length: STEPS + 1 }, (_, step) => {
          const known = [home(along_, low * ratio ** step), ...(stature === null ? [] : [home('stature', stature)])];
          return model.estimate({ figure, ageYears, known }).estimates.flatMap((one) => ('value' in one ? [one] : []));
        });
        for (let step = 1; step <= STEPS; step++) {
          answers[step]!.forEach((one, i) => {
            const before = answers[step - 1]![i]!;
            // How fast it moves for the measure, both as logarithms; a weight goes with the cube of a girth at most.
            const speed = Math.log(one.value / before.value) / Math.log(ratio);
            expect(Math.abs(speed)).toBeLessThan(3);
            if (!GROWING.includes(one.name)) return;
            expect(speed).toBeGreaterThan(0);
            if (figure !== 'unsaid' && step > 0.6 * STEPS) expect(one.u).toBeGreaterThanOrEqual(before.u);
          });
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('what a maker should know of the estimates', () => {
  const notesOf = (input: EstimatorInput) => model.estimate(input).notes.map(({ code }) => code);

  it('is nothing where the measures agree and somebody of her age was surveyed', () => {
    expect(notesOf(woman(sizeM))).toEqual([]);
    expect(notesOf(woman(sizeM, null))).toEqual([]);
    expect(notesOf(woman(sizeM, 58))).toEqual([]);
  });

  it('is which measure contradicts the others, and the likely slip', () => {
    const { notes } = model.estimate(woman([home('stature', 1650), home('chest-girth', 370), home('hip-girth', 990)]));
    expect(notes).toEqual([
      {
        code: 'measure-doubtful',
        params: {
          question: {
            code: 'inches-as-centimetres',
            params: { name: 'chest-girth', smaller: true, alone: false },
          },
        },
      },
    ]);
  });

  it('is that nobody of her age was surveyed, where anything is estimated', () => {
    expect(notesOf(woman(sizeM, 66))).toEqual(['body-model-age']);
    const all = BODY_DIMENSIONS.map((name) => home(name, 1000));
    expect(notesOf(woman(all, 66))).not.toContain('body-model-age');
  });
});

/** Any values at all, sensible or not. */
const anyInput: fc.Arbitrary<EstimatorInput> = fc.record({
  figure: fc.constantFrom('woman', 'man', 'unsaid'),
  ageYears: fc.option(fc.double({ min: 12, max: 120, noNaN: true }), { nil: null }),
  known: fc.uniqueArray(
    fc.record({
      name: fc.constantFrom(...BODY_DIMENSIONS),
      value: fc.double({ min: 50, max: 3000, noNaN: true }),
      u: fc.double({ min: 0.01, max: 25, noNaN: true }),
    }),
    { selector: ({ name }) => name, maxLength: 24 },
  ),
});

describe('whatever was typed', () => {
  it('every number is finite, in order, and the covariance is its u²', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const before = JSON.stringify(input);
        const { estimates, covariance } = model.estimate(input);
        expect(JSON.stringify(input)).toBe(before);
        const us = new Map<string, number>(input.known.map(({ name, u }) => [name, u]));
        for (const one of estimates) {
          if ('missing' in one) continue;
          expect(one.low).toBeGreaterThan(0);
          expect(one.value).toBeGreaterThan(one.low);
          expect(one.high).toBeGreaterThan(one.value);
          expect(one.high).toBeLessThan(Infinity);
          us.set(one.name, one.u);
        }
        expect(new Set(covariance.names)).toEqual(new Set(us.keys()));
        covariance.names.forEach((name, i) => expect(covariance.matrix[i]![i]! / us.get(name)! ** 2).toBeCloseTo(1, 9));
      }),
      { numRuns: 300 },
    );
  });

  it('the covariance of known and estimated values together is positive definite', () => {
    fc.assert(
      fc.property(
        fc.subarray([...sizeM, home('waist-girth', 780), home('wrist-girth', 155), home('back-waist-length', 420)]),
        (known) => {
          for (const figure of ['woman', 'unsaid'] as const) {
            const { covariance } = model.estimate({ figure, ageYears: null, known });
            const n = covariance.names.length;
            expect(factorInPlace(Array.from(covariance.matrix.flat()), n)).toBe(true);
            covariance.matrix.forEach((row, i) =>
              row.forEach((value, j) => expect(value).toBe(covariance.matrix[j]![i])),
            );
          }
        },
      ),
    );
  });

  it('measures that contradict each other widen the answer', () => {
    const agree = given(woman([home('chest-girth', 900), home('underbust-girth', 770)]), 'upper-arm-girth');
    const contradict = given(woman([home('chest-girth', 800), home('underbust-girth', 900)]), 'upper-arm-girth');
    expect(contradict.u).toBeGreaterThan(1.3 * agree.u);
  });

  it.each([
    [{ name: 'chest-girth', value: 0, u: 1 }, 'not-a-measure'],
    [{ name: 'chest-girth', value: Number.NaN, u: 1 }, 'not-a-measure'],
    [{ name: 'chest-girth', value: 900, u: -1 }, 'not-a-measure'],
    [{ name: 'stature', value: 1700, u: 1 }, 'measured-twice'],
  ] as const)('%j is refused', (one, code) => {
    expect(() => model.estimate(woman([home('stature', 1650), one]))).toThrow(
      expect.objectContaining({ code, pointer: expect.stringMatching(/^\/known\/1\//) }),
    );
  });
});

describe('the spread', () => {
  it('as surveyed lacks the uncertainty of the mappings, at about the same value', () => {
    const narrow = bodyModelEstimator(model.coefficients, 'anyone-as-surveyed').estimate(woman(sizeM));
    const wide = model.estimate(woman(sizeM));
    narrow.estimates.forEach((one, i) => {
      const other = wide.estimates[i]!;
      if (!('value' in one && 'value' in other)) throw new Error('both are answered');
      expect(other.value / one.value).toBeCloseTo(1, 2);
      expect(other.u).toBeGreaterThanOrEqual(one.u);
    });
  });
});
