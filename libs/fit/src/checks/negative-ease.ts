import { constant, max, minus, plus, quotient, times } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { always, type CheckRule, never } from './check.ts';
import { easeThat, moreEaseUnlessMade, those, widerBody } from './cures.ts';

/** A girth that a ratio is taken over is no less than this, mm: over nothing it would be boundless. */
const LEAST = constant(1);

/** How far a garment smaller than the body must stretch all the time, as a share. */
export const negativeEase: CheckRule = {
  check: 'negative-ease',
  dimension: 'chest-width',
  wishes: ['smaller-than-body', 'fabric-stretch'],
  kind: 'stretch',
  comfort: never,
  stretches: always,
  applies: (_, need) => !(need <= 0),
  limits: ({ choices: { usable }, girths }) => {
    const round = plus(INPUTS.chest, times(2 * Math.PI, INPUTS.layer));
    return {
      need: minus(quotient(round, max(girths.bodyInner, LEAST)), constant(1)),
      have: constant(usable.main),
    };
  },
  saysMargin: false,
  details: ({ v }) => ({ overLayer: v(INPUTS.layer) > 0 }),
  cures: ({ choices, ease }) => widerBody(choices, those(easeThat('more', ease), 'stretchier-fabric')),
  remedies: moreEaseUnlessMade,
};
