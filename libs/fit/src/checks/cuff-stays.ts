import { times } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { sleeveIsMade } from '../design/made-pieces.ts';
import { always, type CheckRule, hasSleeve, never } from './check.ts';

/** A rib that stretches by less beyond the hand than this passes no hand that a closer cuff would stay above (assumed). */
const RIB_TO_SPARE = 1.05;

export const cuffStays: CheckRule = {
  check: 'cuff-stays',
  dimension: 'cuff-width',
  wishes: ['cuff-stays', 'wide-cuff'],
  kind: 'girth-needed',
  comfort: always,
  stretches: never,
  applies: hasSleeve,
  limits: ({ choices, sleeve }) => ({
    need: sleeve!.cuffInner,
    have: times(choices.rules['cuff-stays-share'], INPUTS.hand),
  }),
  saysMargin: false,
  details: ({ choices, margin }) => ({ widerMm: margin > -choices.rules['length-room'] ? null : -margin }),
  // A rib that gives too little passes no hand that would keep it up; and a cuff that passes none is no closer made.
  cures: ({ choices, isFine }) => {
    if (sleeveIsMade(choices)) return ['fold-cuff'];
    if (1 + choices.usable.rib < RIB_TO_SPARE * choices.rules['hand-tucked'] || !isFine('hand-through-cuff'))
      return ['fold-cuff', 'stretchier-and-closer-cuff'];
    return ['closer-cuff', 'fold-cuff'];
  },
  remedies: (search) =>
    search.choices.own.cuff && !sleeveIsMade(search.choices)
      ? search.less(INPUTS.ownCuff, 'cuffWidthMm', 'closer-cuff')
      : [],
};
