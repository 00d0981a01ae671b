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

const reason = (input: EstimatorInput, name: BodyDimension) => {
  const found = model.estimate(input).estimates.find((one) => one.name === name)!;
  return 'missing' in found ? found.missing : null;
};

describe('estimates', () => {
  it('are one for every dimension that was not known, and say from what', () => {
    const { estimates, from } = model.estimate(woman(sizeM));
    const known = sizeM.map(({ name }) => name);
    expect(estimates.map(({ name }) => name)).toEqual(BODY_DIMENSIONS.filter((name) => !known.includes(name)));
    expect(from).toEqual({ code: 'body-model', params: { known, version: 1 } });
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

describe('"measure it"', () => {
  it.each([
    ['stature', 1900, 'above'],
    ['stature', 1400, 'below'],
    ['chest-girth', 1300, 'above'],
    ['hip-girth', 1350, 'above'],
  ] as const)('is the only answer where %s is %d, %s what the surveys hold', (name, value, side) => {
    const { estimates } = model.estimate(woman([home(name, value)]));
    expect(estimates.every((one) => 'missing' in one)).toBe(true);
    expect(reason(woman([home(name, value)]), 'head-girth')).toEqual({
      code: 'known-value-outside-surveys',
      params: { name, side },
    });
  });

  it('is said of what a strange wrist moves, and of nothing else', () => {
    const known = [...sizeM, home('wrist-girth', 175)];
    expect(reason(woman(known), 'hand-girth')?.params).toEqual({ name: 'wrist-girth', side: 'above' });
    const answered = model.estimate(woman(known)).estimates.filter((one) => 'value' in one);
    expect(answered.map(({ name }) => name)).toEqual(expect.arrayContaining(['front-waist-length', 'waist-to-hip']));
  });

  it('is said of an estimate that itself lies outside', () => {
    const known = [home('weight', 47_000), home('stature', 1740)];
    const outside = model.estimate(woman(known)).estimates.flatMap((one) => ('missing' in one ? [one] : []));
    expect(outside.map(({ missing }) => missing)).toContainEqual({
      code: 'estimate-outside-surveys',
      params: { side: 'below' },
    });
    expect(outside.length).toBeLessThan(22);
  });

  it('is said to someone younger than anyone surveyed', () => {
    const { estimates } = model.estimate(woman(sizeM, 15));
    expect(estimates.every((one) => 'missing' in one && one.missing.code === 'too-young')).toBe(true);
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
  it('of anyone is wider than that of the surveyed, at the same value but for age and doubt', () => {
    const narrow = bodyModelEstimator(model.coefficients, 'surveyed').estimate(woman(sizeM, null));
    const wide = bodyModelEstimator(model.coefficients, 'anyone-as-surveyed').estimate(woman(sizeM, null));
    narrow.estimates.forEach((one, i) => {
      const other = wide.estimates[i]!;
      if (!('value' in one && 'value' in other)) throw new Error('both are answered');
      expect(other.value).toBeCloseTo(one.value, 9);
      expect(other.u).toBeGreaterThan(1.1 * one.u * (one.name === 'back-hip-length' ? 0.9 : 1));
    });
  });
});
