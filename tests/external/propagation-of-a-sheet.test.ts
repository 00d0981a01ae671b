import { describe, expect, it } from 'vitest';
import type { BodyDimension } from '#body';
import { advise, type FitRequest } from '#fit';
import { bodyOf, everyDimension, fabricOf, garmentOf, requestOf, WOMAN } from '../support/fit-samples.ts';
import { cholesky, normalDraw, seeded } from '../support/seeded-normal.ts';

/**
 * The uncertainty of every dimension of a whole sheet, which is the law of propagation of JCGM 100:2008 (GUM), equation
 * 13, against a Monte Carlo run (the method of JCGM 101:2008): everything measured is drawn anew and the sheet made again.
 */

const DRAWS = 3000;
/** A standard deviation over n draws is itself known to 1 in √(2n): four of these. */
const TOLERANCE = 4 / Math.sqrt(2 * DRAWS);
/** A dimension that hardly moves is compared no closer than this, mm. */
const LEAST = 0.02;

/** Standard uncertainties of a tape at home, mm. */
const US: Partial<Record<BodyDimension, number>> = {
  'chest-girth': 8,
  'hip-girth': 6,
  'back-waist-length': 7,
  'across-back': 4,
  'nape-to-cuff': 6,
  'upper-arm-girth': 4,
  'wrist-girth': 3,
  'hand-girth': 3,
  'scye-depth': 4,
  'neck-base-girth': 5,
  'head-girth': 2,
};

/**
 * A hip well below the chest, a head that passes and a fabric whose bands are well between their limits, so that no draw lies across a bend of the
 * model: there the law does not hold.
 */
const measures = { ...WOMAN, 'hip-girth': 900, 'head-girth': 530 };

/** What estimated measures share: chest and upper arm, back and nape, neck and scye. */
const SHARED: readonly (readonly [BodyDimension, BodyDimension, number])[] = [
  ['chest-girth', 'upper-arm-girth', 0.7],
  ['across-back', 'nape-to-cuff', 0.4],
  ['neck-base-girth', 'scye-depth', -0.3],
  ['chest-girth', 'across-back', 0.5],
];

const names = Object.keys(US) as BodyDimension[];
const correlation = names.map((a) =>
  names.map((b) => {
    if (a === b) return 1;
    return SHARED.find(([x, y]) => (x === a && y === b) || (x === b && y === a))?.[2] ?? 0;
  }),
);
const covariance = {
  names,
  matrix: correlation.map((row, i) => row.map((r, j) => r * US[names[i]!]! * US[names[j]!]!)),
};

const request = (differs: Parameters<typeof requestOf>[0]): FitRequest =>
  requestOf({ body: { ...bodyOf(measures, 'woman', { ...zeros(), ...US }), covariance }, ...differs });

const zeros = (): Partial<Record<BodyDimension, number>> =>
  Object.fromEntries(Object.keys(measures).map((name) => [name, 0]));

/** The request with everything that has an uncertainty drawn anew. */
function drawn(from: FitRequest, random: () => number): FitRequest {
  const lower = cholesky(correlation);
  const z = names.map(() => normalDraw(random));
  const moves = lower.map((row) => row.reduce((sum, l, k) => sum + l * z[k]!, 0));
  const values = { ...from.body!.values };
  names.forEach((name, i) => {
    values[name] = { ...values[name]!, value: values[name]!.value + US[name]! * moves[i]! };
  });
  const { fabric, garment } = from;
  return {
    ...from,
    body: { ...from.body!, values },
    fabric: { ...fabric, thicknessMm: fabric.thicknessMm + fabric.thicknessU * normalDraw(random) },
    garment: garment && {
      ...garment,
      thicknessMm: garment.thicknessMm + garment.thicknessU * normalDraw(random),
      values: Object.fromEntries(
        Object.entries(garment.values).map(([name, known]) => [
          name,
          { ...known, value: known.value + known.u * normalDraw(random) },
        ]),
      ),
    },
  };
}

/** The standard deviation of every dimension over draws. */
function spreads(from: FitRequest): Map<string, number> {
  const random = seeded(20260101);
  const sums = new Map<string, { sum: number; squares: number }>();
  const centres = new Map(everyDimension(advise(from)).map(([path, { value }]) => [path, value ?? NaN]));
  for (let draw = 0; draw < DRAWS; draw++) {
    for (const [path, { value }] of everyDimension(advise(drawn(from, random)))) {
      const off = (value ?? NaN) - centres.get(path)!;
      const { sum, squares } = sums.get(path) ?? { sum: 0, squares: 0 };
      sums.set(path, { sum: sum + off, squares: squares + off * off });
    }
  }
  return new Map([...sums].map(([path, { sum, squares }]) => [path, Math.sqrt(squares / DRAWS - (sum / DRAWS) ** 2)]));
}

describe('the uncertainty of every dimension is that of a Monte Carlo run', () => {
  const garment = garmentOf(
    { 'chest-width': 520, 'sleeve-length': 480, 'shoulder-to-hem': 610, 'back-neck-depth': 22, 'armhole-depth': 220 },
    { construction: 'drop-shoulder' },
  );
  it.each([
    ['a set-in pullover in a thick yarn', { fabric: fabricOf(8), design: { construction: 'set-in' as const } }],
    ['a raglan with a V', { design: { construction: 'raglan' as const, neckline: 'v' as const } }],
    ['a drop shoulder cardigan', { fabric: fabricOf(4), design: { silhouette: 'cardigan' as const } }],
    ['a squared drop, loose', { design: { construction: 'squared-drop' as const, ease: { mm: 130 } } }],
    ['a garment that fits, and the body where it says nothing', { garment, design: { basis: 'both' as const } }],
  ])('%s', { timeout: 120_000 }, (_, differs) => {
    const planned = request(differs);
    const spread = spreads(planned);
    for (const [path, { value, u }] of everyDimension(advise(planned))) {
      if (value === null) continue;
      expect(Math.abs(u! - spread.get(path)!), `${path}: ${u} against ${spread.get(path)}`).toBeLessThan(
        Math.max(TOLERANCE * spread.get(path)!, LEAST),
      );
    }
  });
});
