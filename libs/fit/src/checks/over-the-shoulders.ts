import { max, min, plus, times } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { bodyIsMade } from '../design/made-pieces.ts';
import { NONE } from '../messages/none.ts';
import { always, type CheckRule, isPulledOn, never } from './check.ts';
import { easeThat, hemIsNarrowest, those, widerBody } from './cures.ts';

const { chest, shoulderGirth, layer } = INPUTS;

/** On over the shoulders, arms raised: halfway from the chest to the girth round the shoulders. */
export const overTheShoulders: CheckRule = {
  check: 'over-the-shoulders',
  dimension: 'chest-width',
  wishes: ['goes-over-shoulders', 'close-ease'],
  kind: 'girth',
  comfort: never,
  stretches: always,
  applies: isPulledOn,
  limits: ({ choices: { usable }, girths }) => ({
    need: plus(max(chest, times(0.5, plus(chest, shoulderGirth))), times(2 * Math.PI, layer)),
    have: times(1 + usable.main, min(girths.bodyInner, girths.hemInner)),
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
