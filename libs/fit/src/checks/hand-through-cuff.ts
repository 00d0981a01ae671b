import { times } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { sleeveIsMade } from '../design/made-pieces.ts';
import { type CheckRule, hasSleeve, never } from './check.ts';

export const handThroughCuff: CheckRule = {
  check: 'hand-through-cuff',
  dimension: 'cuff-width',
  wishes: ['hand-passes', 'close-cuff'],
  kind: 'girth',
  comfort: never,
  stretches: never,
  applies: hasSleeve,
  limits: ({ choices: { rules, usable }, sleeve }) => ({
    need: times(rules['hand-tucked'], INPUTS.hand),
    have: times(1 + usable.rib, sleeve!.cuffInner),
  }),
  saysMargin: true,
  cures: ({ choices }) => {
    if (sleeveIsMade(choices)) return ['wider-cuff-again', 'stretchier-rib-again'];
    return [choices.kept.wrist ? 'wider-cuff-than-garment' : 'wider-cuff', 'stretchier-rib'];
  },
  remedies: (search) =>
    search.choices.own.cuff && !sleeveIsMade(search.choices)
      ? search.more(INPUTS.ownCuff, 'cuffWidthMm', { step: 2.5, most: 150 }, 'wider-cuff')
      : [],
};
