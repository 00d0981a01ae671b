import { INPUTS } from '../model/inputs.ts';
import { opensAtSeam } from '../constructions/opens-at-seam.ts';
import { bodyIsMade, frontIsMade } from '../design/made-pieces.ts';
import { type CheckRule, type FoundRemedy, isPulledOn, never, type RemedySearch } from './check.ts';
import { armholeOf, those } from './cures.ts';

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
  limits: ({ headPasses }) => ({ need: INPUTS.head, have: headPasses }),
  saysMargin: true,
  cures: (at) => {
    const cures = those(
      at.offered('frontNeckDepthMm') && 'deeper-neck',
      at.offered('neckWidthMm') && 'wider-neck',
      at.offered('opening') && 'open-neck',
    );
    return cures.length > 0 ? cures : ['another-neckline'];
  },
  remedies: (search) => {
    const { choices, garment, kappa } = search;
    const most = choices.neckline === 'boat' ? MOST_DEEPER_BOAT * kappa : MOST_DEEPER;
    const rest = search.neckAsItStands();
    return [
      ...openings(search),
      ...(frontIsMade(choices)
        ? []
        : search.more(garment.neck.front, 'frontNeckDepthMm', { step: 5, most }, 'deeper-front-neck', rest)),
      ...(bodyIsMade(choices)
        ? []
        : search.more(garment.neck.width, 'neckWidthMm', { step: 5, most: 150 }, 'wider-neck', rest)),
    ];
  },
};

/** The first place where an opening lets the head pass. */
function openings(search: RemedySearch): FoundRemedy[] {
  const seams = opensAtSeam(search.choices) ? (['shoulder', 'shoulders'] as const) : [];
  const beside = armholeOf(search.choices);
  for (const at of [...seams, 'back'] as const) {
    const found = search.choice({ opening: at }, { code: 'open-neck', params: { at, beside } });
    if (found.length > 0) return found;
  }
  return [];
}
