import type { CautionCodes } from '#fit';
import type { Catalogue } from '../catalogue.ts';

/** Where the work can hurt someone. */
export const cautions: Catalogue<CautionCodes> = {
  'no-cords': () => 'No cords, ribbons or ties at the neck or on a hood: they can catch and strangle.',
  'closures-hold': () =>
    'Sew buttons and other closures on so that they cannot come off in a mouth; none at all for a baby is safest.',
  'neck-not-tight': () =>
    'Nothing tight round the neck: try that the finished neck slips easily over the head and lies loose.',
  nightwear: () =>
    'Nightwear for children falls under fire-safety rules in many places; look up the local law before it is slept in.',
  'fibre-allergy': () =>
    'Wool and other fibres can irritate or cause allergies: wear the swatch against the skin for a day; ask a doctor where skin has reacted before.',
};
