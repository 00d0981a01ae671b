import { abs, constant, minus } from '#measure';
import type { GarmentModel } from '../model/garment-model.ts';
import type { ValueOf } from '../model/path.ts';
import { type CheckRule, never } from './check.ts';

/** How far past the planned cuff the sleeve ends, mm. */
const cuffPast = ({ sleeve, lengths }: GarmentModel, v: ValueOf): number => v(sleeve!.reached) - v(lengths.napeToCuff);

/** Where a sleeve that is made already ends, against the way from nape to cuff as planned. */
export const napeToCuff: CheckRule = {
  check: 'nape-to-cuff',
  dimension: 'neck-to-cuff',
  wishes: ['nape-to-cuff', 'sleeve-as-made'],
  kind: 'length',
  comfort: never,
  stretches: never,
  applies: ({ made }) => made.sleeve,
  limits: ({ choices: { rules }, sleeve, lengths }) => ({
    need: abs(minus(sleeve!.reached, lengths.napeToCuff)),
    have: constant(rules['length-room']),
  }),
  saysMargin: false,
  details: ({ garment, v }) => ({ pastMm: cuffPast(garment, v) }),
  cures: ({ garment, v, margin }) => {
    if (margin >= 0) return ['try-on'];
    return cuffPast(garment, v) < 0 ? ['add-to-cuff'] : ['fold-made-cuff', 'leave-some-cuff-out'];
  },
};
