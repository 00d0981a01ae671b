import { minus, plus, times } from '#measure';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import { closeStretch } from '../model/stretch.ts';
import { INPUTS } from '../model/inputs.ts';
import { bodyIsMade } from '../design/made-pieces.ts';
import { type CheckRule, isCloseFitting, never } from './check.ts';

export const armhole: CheckRule = {
  check: 'armhole',
  dimension: 'armhole-depth',
  wishes: ['shoulder-room', 'shallow-armhole'],
  kind: 'girth',
  comfort: never,
  stretches: isCloseFitting,
  applies: ({ construction }) => CONSTRUCTIONS[construction].hasArmhole,
  limits: ({ choices, armhole }) => ({
    need: plus(INPUTS.scyeGirth, times(2 * Math.PI * choices.layer.arm, INPUTS.layer)),
    have: times(closeStretch(choices), minus(times(2, armhole.seam), times(Math.PI, INPUTS.thickness))),
  }),
  saysMargin: true,
  cures: ({ choices, garment }) => {
    if (bodyIsMade(choices)) return ['deeper-armhole-again'];
    if (garment.rounded.armhole.fixed) return [choices.made.cap ? 'higher-cap-again' : 'wider-top-again'];
    return [choices.kept.armhole ? 'deeper-armhole-than-garment' : 'deeper-armhole'];
  },
};
