import { min, minus, plus, positive, times } from '#measure';
import { mainStretch } from '../model/stretch.ts';
import { INPUTS } from '../model/inputs.ts';
import { bodyIsMade } from '../design/made-pieces.ts';
import { NONE } from '../messages/none.ts';
import { always, type CheckRule, isPulledOn, never } from './check.ts';
import { easeThat, hemIsNarrowest, those, widerBody } from './cures.ts';

const { chest, shoulderGirth, layer } = INPUTS;

/** On over the shoulders, arms raised: a quarter of the way from the chest to the girth round the shoulders (assumed). */
export const overTheShoulders: CheckRule = {
  check: 'over-the-shoulders',
  dimension: 'chest-width',
  wishes: ['goes-over-shoulders', 'close-ease'],
  kind: 'girth',
  comfort: never,
  stretches: always,
  applies: isPulledOn,
  limits: ({ choices, girths }) => ({
    need: plus(chest, times(0.25, positive(minus(shoulderGirth, chest))), times(2 * Math.PI, layer)),
    have: times(mainStretch(choices), min(girths.bodyInner, girths.hemInner)),
  }),
  saysMargin: true,
  cures: (at) => [
    ...those(hemIsNarrowest(at) && 'straight-hem'),
    ...widerBody(at.choices, those(easeThat('more', at.ease), 'stretchier-fabric', 'cardigan')),
  ],
  remedies: (search) => {
    if (bodyIsMade(search.choices)) return [];
    const straight = hemIsNarrowest(search)
      ? search.choice({ hem: 'straight' }, { code: 'straight-hem', params: NONE })
      : [];
    return [...straight, ...search.moreEase()];
  },
};
