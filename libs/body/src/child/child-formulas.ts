import type { BodyDimension } from '../body-dimension.ts';
import type { BodySource } from '../source-codes.ts';
import { headGirthAt } from './head-girth-by-age.ts';
import { NAPE_TO_CUFF_PARTS } from './nape-to-cuff.ts';

/** A dimension as a constant plus so many times others, mm. `own` is the formula's own standard uncertainty; that of what it rests on comes on top. */
export interface ChildFormula {
  readonly name: BodyDimension;
  readonly constant: number;
  readonly times: Readonly<Partial<Record<BodyDimension, number>>>;
  readonly own: number;
  readonly from: BodySource;
}

/** A constant, mm, and so many times another dimension. */
const linear = (
  name: BodyDimension,
  constantMm: number,
  times: number,
  of: BodyDimension,
  own: number,
): ChildFormula => ({
  name,
  constant: constantMm,
  times: { [of]: times },
  own,
  from: { code: 'formula', params: { constantMm, times, of } },
});

/** Assumed, all of them. In order: one may rest on an earlier one. */
const FROM_OTHERS: readonly ChildFormula[] = [
  linear('neck-base-girth', 110, 0.285, 'chest-girth', 14.4), // u 15 in all, with a chest measured at home
  linear('hand-girth', 0, 1.2, 'wrist-girth', 5),
  {
    name: 'forearm-girth',
    constant: 0,
    times: { 'upper-arm-girth': 0.55, 'wrist-girth': 0.55 },
    own: 10,
    from: { code: 'forearm-from-arm', params: {} },
  },
  linear('front-waist-length', 0, 1, 'back-waist-length', 12), // a child's front is as long as its back
  linear('shoulder-girth', 0, 1.13, 'chest-girth', 25),
  linear('scye-girth', 0, 2, 'scye-depth', 10),
  {
    name: 'nape-to-cuff',
    constant: 0,
    times: NAPE_TO_CUFF_PARTS,
    own: 21.5, // 25 in all, with all three measured at home; the tables' own are 24 longer on average (nape-to-cuff.ts)
    from: { code: 'nape-to-cuff-from-arm', params: {} },
  },
];

/** A baby's waist and hip, which its table lacks; u 25 in all, with a chest measured at home. */
const OF_A_BABY: readonly ChildFormula[] = [
  linear('waist-girth', 0, 1, 'chest-girth', 20),
  linear('hip-girth', 0, 1.04, 'chest-girth', 19.5),
];

/** What a child's or a baby's age in years tells: the wrist (assumed) and the head (growth references, from memory). */
function fromAge(ageYears: number): readonly ChildFormula[] {
  return [
    {
      name: 'wrist-girth',
      constant: 108 + 3.2 * ageYears,
      times: {},
      own: 8,
      from: { code: 'wrist-from-age', params: { ageYears } },
    },
    {
      name: 'head-girth',
      constant: headGirthAt(ageYears),
      times: {},
      own: 15,
      from: { code: 'head-from-age', params: { ageYears } },
    },
  ];
}

/** The formulas for a child or a baby of an age in years, in the order to apply them. */
export function childFormulas(figure: 'child' | 'baby', ageYears: number): readonly ChildFormula[] {
  return [...(ageYears === null ? [] : fromAge(ageYears)), ...(figure === 'baby' ? OF_A_BABY : []), ...FROM_OTHERS];
}
