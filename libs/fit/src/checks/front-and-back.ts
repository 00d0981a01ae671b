import { constant, minus } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { frontIsMade } from '../design/made-pieces.ts';
import { always, type CheckRule, never } from './check.ts';

/** How much longer the body is in front than behind. */
export const frontAndBack: CheckRule = {
  check: 'front-and-back',
  dimension: 'shoulder-to-hem',
  wishes: ['front-stays-down', 'equal-front-and-back'],
  kind: 'length',
  comfort: always,
  stretches: never,
  applies: always,
  limits: ({ choices: { rules } }) => ({
    need: minus(INPUTS.frontWaist, INPUTS.backWaist),
    have: constant(rules['front-longer-most']),
  }),
  saysMargin: false,
  cures: ({ choices, margin }) => {
    if (margin >= 0) return ['measure-waist-lengths'];
    return [frontIsMade(choices) ? 'short-rows-again' : 'short-rows'];
  },
  measureFirst: 'measure-that-before-short-rows',
};
