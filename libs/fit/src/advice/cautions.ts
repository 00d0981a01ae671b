import type { BodyProfile } from '#body';
import type { Caution } from '../messages/advice.ts';
import { NONE } from '../messages/none.ts';

const FOR_CHILDREN = (['no-cords', 'closures-hold', 'neck-not-tight', 'nightwear'] as const).map((code): Caution => {
  return { code, params: NONE, source: { code: 'practice-and-law-for-children', params: NONE } };
});

const FOR_ALL: readonly Caution[] = [
  { code: 'fibre-allergy', params: NONE, source: { code: 'common-practice', params: NONE } },
];

/** A garment less round than this, mm, is taken for a child's where it is not said who wears it (assumed). */
const CHILDS = 800;

/** Children's clothes are made for less than this age, years. Source: EN 14682:2014, scope (from memory). */
const GROWN = 14;

/** Cautions that apply to the wearer; `girth` is the garment's at the chest, mm. */
export function cautionsFor(body: Pick<BodyProfile, 'figure' | 'ageYears'> | null, girth: number): readonly Caution[] {
  return isYoung(body, girth) ? [...FOR_CHILDREN, ...FOR_ALL] : FOR_ALL;
}

function isYoung(body: Pick<BodyProfile, 'figure' | 'ageYears'> | null, girth: number): boolean {
  if (body === null) return girth < CHILDS;
  const { figure, ageYears } = body;
  if (figure === 'child' || figure === 'baby' || (ageYears !== null && ageYears < GROWN)) return true;
  return figure === 'unsaid' && ageYears === null && girth < CHILDS;
}
