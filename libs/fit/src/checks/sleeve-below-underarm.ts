import { plus } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { bodyIsMade, sleeveIsMade } from '../design/made-pieces.ts';
import { type CheckRule, hasSleeve, never } from './check.ts';
import { easeThat, those } from './cures.ts';

export const sleeveBelowUnderarm: CheckRule = {
  check: 'sleeve-below-underarm',
  dimension: 'underarm-seam',
  wishes: ['sleeve-below-underarm', 'short-sleeve'],
  kind: 'length',
  comfort: never,
  stretches: never,
  applies: hasSleeve,
  limits: ({ body, sleeve }) => ({ need: plus(body.rib, INPUTS.sleeveBelow), have: sleeve!.underarmSeam }),
  saysMargin: true,
  cures: ({ choices, ease, offered }) => {
    if (sleeveIsMade(choices)) return ['longer-sleeve-again'];
    return those(!bodyIsMade(choices) && easeThat('less', ease), offered('ribMm') && 'shallower-rib', 'longer-sleeve');
  },
  remedies: (search) =>
    sleeveIsMade(search.choices) || bodyIsMade(search.choices)
      ? []
      : search.less(search.garment.body.rib, 'ribMm', 'shallower-rib'),
};
