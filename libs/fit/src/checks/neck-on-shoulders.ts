import { constant, minus, whereKnown } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { bodyIsMade } from '../design/made-pieces.ts';
import { always, type CheckRule, never } from './check.ts';
import { alternative, scarcest } from './scarcest.ts';
import { those } from './cures.ts';

const { acrossBack, neckFromShoulders, shoulderLeast } = INPUTS;

/** The neck stays on the shoulders where the back is wide enough for it and a shoulder is left. The scarcer counts. */
export const neckOnShoulders: CheckRule = {
  check: 'neck-on-shoulders',
  dimension: 'neck-width',
  wishes: ['neck-stays-on', 'wide-neck'],
  kind: 'length',
  comfort: never,
  stretches: never,
  applies: always,
  limits: ({ neck, body: { shoulders } }) => {
    const back = alternative('back', { need: neck.width, have: minus(acrossBack, neckFromShoulders) });
    if (shoulders === null) return scarcest([back]);
    const shoulder = alternative('shoulder', { need: shoulderLeast, have: shoulders.onPiece });
    // A shoulder that is not known leaves the back to be compared.
    return scarcest([back, { ...shoulder, spare: whereKnown(shoulder.spare, shoulder.spare, constant(Infinity)) }]);
  },
  saysMargin: true,
  code: ({ alternatives }, { v }) => {
    const [back, shoulder] = alternatives!;
    return shoulder && v(shoulder.spare) < v(back!.spare) ? 'shoulder-beside-neck' : 'neck-on-shoulders';
  },
  // For the head or the neck itself it may have to be deeper for it.
  cures: ({ choices, offered }) => {
    if (bodyIsMade(choices)) return ['narrower-neck-again'];
    const cures = those(offered('neckWidthMm') && 'narrower-neck', offered('bandMm') && 'shallower-bands');
    return cures.length > 0 ? cures : ['narrower-and-deeper-neck'];
  },
  remedies: (search) => {
    const { choices, garment } = search;
    if (bodyIsMade(choices)) return [];
    return [
      ...search.less(garment.neck.width, 'neckWidthMm', 'narrower-neck', search.neckAsItStands()),
      ...search.less(garment.neck.band, 'bandMm', 'shallower-bands'),
    ];
  },
};
