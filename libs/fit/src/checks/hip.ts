import { plus, times } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { mainStretch } from '../model/stretch.ts';
import { waistLevel } from '../inputs/hip-reached.ts';
import { bodyIsMade } from '../design/made-pieces.ts';
import { always, type CheckRule, never } from './check.ts';
import { easeThat, moreEaseUnlessMade, those } from './cures.ts';

export const hip: CheckRule = {
  check: 'hip',
  dimension: 'hem-width',
  wishes: ['hip-room', 'close-hem'],
  kind: 'girth',
  comfort: never,
  stretches: always,
  applies: ({ hipReached }) => hipReached,
  limits: ({ choices, girths }) => ({
    need: plus(INPUTS.hip, times(2 * Math.PI, INPUTS.layer)),
    have: times(mainStretch(choices), girths.hemInner),
  }),
  saysMargin: true,
  // Where it is not known how far down the hip is, the measure that tells.
  cures: ({ choices, values, ease }) => {
    if (bodyIsMade(choices)) return ['wider-or-shorter-body-again'];
    const kept = choices.kept.length;
    const unknown = Number.isNaN(waistLevel(values, choices.rules)) && (choices.length === 'custom' || kept);
    const shorter = kept ? 'own-length-shorter-than-garment' : 'shorter-length';
    return those(easeThat('more', ease), 'stretchier-fabric', unknown ? 'measure-back-waist' : shorter);
  },
  remedies: moreEaseUnlessMade,
};
