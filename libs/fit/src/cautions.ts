import type { BodyProfile } from '#body';
import type { Note } from '#measure';

const PRACTICE = 'common practice; local law and standards for children’s clothes decide';

const FOR_CHILDREN: readonly Note[] = [
  {
    code: 'no-cords',
    text: 'No cords, ribbons or ties at the neck or on a hood: they can catch and strangle.',
    source: PRACTICE,
  },
  {
    code: 'closures-hold',
    text: 'Sew buttons and other closures on so that they cannot come off in a mouth; none at all for a baby is safest.',
    source: PRACTICE,
  },
  {
    code: 'neck-not-tight',
    text: 'Nothing tight round the neck: try that the finished neck slips easily over the head and lies loose.',
    source: PRACTICE,
  },
  {
    code: 'nightwear',
    text: 'Nightwear for children falls under fire-safety rules in many places; look up the local law before it is slept in.',
    source: PRACTICE,
  },
];

const FOR_ALL: readonly Note[] = [
  {
    code: 'fibre-allergy',
    text: 'Wool and other fibres can irritate or cause allergies: wear the swatch against the skin for a day; ask a doctor where skin has reacted before.',
    source: 'common practice',
  },
];

/** A garment less round than this, mm, is taken for a child's where it is not said who wears it (assumed). */
const CHILDS = 800;

/** Children's clothes are made for less than this age, years. Source: EN 14682:2014, scope (from memory). */
const GROWN = 14;

/** Cautions that apply to the wearer; `girth` is the garment's at the chest, mm. */
export function cautionsFor(body: Pick<BodyProfile, 'figure' | 'ageYears'> | null, girth: number): readonly Note[] {
  return isYoung(body, girth) ? [...FOR_CHILDREN, ...FOR_ALL] : FOR_ALL;
}

function isYoung(body: Pick<BodyProfile, 'figure' | 'ageYears'> | null, girth: number): boolean {
  if (body === null) return girth < CHILDS;
  const { figure, ageYears } = body;
  if (figure === 'child' || figure === 'baby' || (ageYears !== null && ageYears < GROWN)) return true;
  return figure === 'unsaid' && ageYears === null && girth < CHILDS;
}
