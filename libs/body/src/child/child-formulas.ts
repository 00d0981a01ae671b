import type { BodyDimension } from '../body-dimension.ts';
import { ageText } from '../age-text.ts';
import { HEAD_AGES, headGirthAt } from './head-girth-by-age.ts';
import { NAPE_TO_CUFF_PARTS } from './nape-to-cuff.ts';

/** A dimension as a constant plus so many times others, mm. `own` is the formula's own standard uncertainty; that of what it rests on comes on top. */
export interface ChildFormula {
  readonly name: BodyDimension;
  readonly constant: number;
  readonly times: Readonly<Partial<Record<BodyDimension, number>>>;
  readonly own: number;
  readonly from: string;
}

/** Assumed, all of them. In order: one may rest on an earlier one. */
const FROM_OTHERS: readonly ChildFormula[] = [
  {
    name: 'neck-base-girth',
    constant: 110,
    times: { 'chest-girth': 0.285 },
    own: 14.4, // 15 in all, with a chest measured at home
    from: '110 mm + 0.285 × chest girth (assumed)',
  },
  { name: 'hand-girth', constant: 0, times: { 'wrist-girth': 1.2 }, own: 5, from: '1.2 × wrist girth (assumed)' },
  {
    name: 'shoulder-girth',
    constant: 0,
    times: { 'chest-girth': 1.13 },
    own: 25,
    from: '1.13 × chest girth (assumed)',
  },
  { name: 'scye-girth', constant: 0, times: { 'scye-depth': 2 }, own: 10, from: '2 × scye depth (assumed)' },
  {
    name: 'nape-to-cuff',
    constant: 0,
    times: NAPE_TO_CUFF_PARTS,
    own: 21.5, // 25 in all, with all three measured at home; the tables' own are 24 longer on average (nape-to-cuff.ts)
    from: 'half the back + arm to the underarm + 0.6 × scye depth (assumed)',
  },
];

/** What a child's or a baby's age in years tells: the wrist (assumed) and the head (growth references, from memory); nothing outside their ages. */
function fromAge(ageYears: number): readonly ChildFormula[] {
  const head = headGirthAt(ageYears);
  if (head === null) return [];
  const age = ageText(ageYears);
  return [
    {
      name: 'wrist-girth',
      constant: 108 + 3.2 * ageYears,
      times: {},
      own: 8,
      from: `108 mm + 3.2 mm a year, at ${age} (assumed)`,
    },
    {
      name: 'head-girth',
      constant: head,
      times: {},
      own: 15,
      from: `growth references, middle at ${age} (from memory)`,
    },
  ];
}

/** The formulas for a child or a baby of an age in years, or of none, in the order to apply them. */
export function childFormulas(ageYears: number | null): readonly ChildFormula[] {
  return [...(ageYears === null ? [] : fromAge(ageYears)), ...FROM_OTHERS];
}

/** The dimensions that need an age, and the ages that will do. */
export const AGE_RANGE_TEXT = `${ageText(HEAD_AGES.youngest)} to ${ageText(HEAD_AGES.oldest)}`;
