import { min, times } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { bodyIsMade, frontIsMade } from '../design/made-pieces.ts';
import { type CheckRule, isPulledOn, never } from './check.ts';
import { openingOf, those } from './cures.ts';

/** So much deeper a front neck is offered at most, mm; a boat that is any deeper is none (assumed). */
const MOST_DEEPER = 200;
const MOST_DEEPER_BOAT = 30;

export const headThroughNeck: CheckRule = {
  check: 'head-through-neck',
  dimension: 'neck-opening',
  wishes: ['head-passes', 'neck-as-chosen'],
  kind: 'girth',
  comfort: never,
  stretches: never,
  applies: isPulledOn,
  limits: ({ choices: { usable }, neck }) => {
    const throughRib = times(1 + usable.rib, neck.opening);
    return {
      need: INPUTS.head,
      have: usable.mainMeasured ? min(throughRib, times(1 + usable.main, neck.edge)) : throughRib,
    };
  },
  saysMargin: true,
  cures: (at) => {
    const cures = those(
      at.offered('frontNeckDepthMm') && 'deeper-neck',
      at.offered('neckWidthMm') && 'wider-neck',
      openingOf(at) ?? false,
    );
    return cures.length > 0 ? cures : ['another-neckline'];
  },
  remedies: (search) => {
    const { choices, garment, kappa } = search;
    const most = choices.neckline === 'boat' ? MOST_DEEPER_BOAT * kappa : MOST_DEEPER;
    const rest = search.neckAsItStands();
    return [
      ...(frontIsMade(choices)
        ? []
        : search.more(garment.neck.front, 'frontNeckDepthMm', { step: 5, most }, 'deeper-front-neck', rest)),
      ...(bodyIsMade(choices)
        ? []
        : search.more(garment.neck.width, 'neckWidthMm', { step: 5, most: 150 }, 'wider-neck', rest)),
    ];
  },
};
