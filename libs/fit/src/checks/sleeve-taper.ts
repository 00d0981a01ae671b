import { constant, max, minus, quotient, times } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { sleeveIsMade } from '../design/made-pieces.ts';
import { always, type CheckRule, hasSleeve, never } from './check.ts';
import { armholeOf, hasArmholeToSpare, those } from './cures.ts';

/** A length that a ratio is taken over is no less than this, mm: over nothing it would be boundless. */
const LEAST = constant(1);

/** How much a sleeve narrows on each side for its length above the rib. */
export const sleeveTaper: CheckRule = {
  check: 'sleeve-taper',
  dimension: 'sleeve-top-width',
  wishes: ['gentle-taper', 'wide-top'],
  kind: 'length',
  comfort: always,
  stretches: never,
  applies: hasSleeve,
  limits: ({ choices: { rules }, body, sleeve }) => ({
    need: quotient(times(0.5, minus(sleeve!.top, sleeve!.aboveRib)), max(minus(sleeve!.underarmSeam, body.rib), LEAST)),
    have: constant(rules['sleeve-taper-most']),
  }),
  saysMargin: false,
  cures: (at) => {
    const { choices, garment, v } = at;
    if (sleeveIsMade(choices)) return ['longer-or-wider-sleeve-again'];
    return those(
      v(INPUTS.hand) > v(garment.sleeve!.cuffInner) && 'wider-cuff-for-taper',
      hasArmholeToSpare(at) && `shallower-${armholeOf(choices)}-for-taper`,
      'longer-sleeve-for-taper',
    );
  },
  measureFirst: 'measure-that-to-be-sure',
};
