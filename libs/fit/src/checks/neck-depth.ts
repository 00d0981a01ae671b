import { plus } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { frontIsMade } from '../design/made-pieces.ts';
import { always, type CheckRule, never } from './check.ts';
import { those } from './cures.ts';

/** A V's point against the fullest part of the chest. */
export const neckDepth: CheckRule = {
  check: 'neck-depth',
  dimension: 'front-neck-depth',
  wishes: ['v-above-chest', 'deep-v'],
  kind: 'length',
  comfort: always,
  stretches: never,
  applies: ({ neckline }) => neckline === 'v',
  limits: ({ neck }) => ({ need: neck.front, have: plus(INPUTS.scyeDepth, INPUTS.bustLine, neck.back) }),
  saysMargin: false,
  cures: ({ offered }) => those(offered('frontNeckDepthMm') && 'shallower-v', 'wear-something-beneath'),
  remedies: (search) =>
    frontIsMade(search.choices)
      ? []
      : search.less(search.garment.neck.front, 'frontNeckDepthMm', 'shallower-v', search.neckAsItStands()),
};
