import { plus, times } from '#measure';
import { closeStretch } from '../model/stretch.ts';
import { INPUTS } from '../model/inputs.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import { bodyIsMade } from '../design/made-pieces.ts';
import { type CheckRule, hasSleeve, isCloseFitting, never } from './check.ts';
import { easeThat, moreEaseUnlessMade, those } from './cures.ts';

export const upperArm: CheckRule = {
  check: 'upper-arm',
  dimension: 'sleeve-top-width',
  wishes: ['upper-arm-room', 'close-sleeve'],
  kind: 'girth',
  comfort: never,
  stretches: isCloseFitting,
  applies: hasSleeve,
  limits: ({ choices, sleeve }) => ({
    need: plus(INPUTS.upperArm, times(2 * Math.PI * choices.layer.arm, INPUTS.layer)),
    have: times(closeStretch(choices), sleeve!.topInner),
  }),
  saysMargin: true,
  cures: ({ choices, ease }) => {
    const made = bodyIsMade(choices);
    const ofArmhole = CONSTRUCTIONS[choices.construction].sleeveTopIs === 'seam';
    if (choices.made.sleeveTop) return ['wider-sleeve-again'];
    if (made && ofArmhole) return ['deeper-armhole-again'];
    // A fabric that stretches more lets an armhole be shallower, and with it the top of a sleeve that is sewn to its edge.
    const stretches = choices.closeFitting && !ofArmhole;
    const cures = those(!made && easeThat('more', ease), stretches && 'fabric-that-stretches-more');
    if (cures.length > 0) return cures;
    return [choices.kept.upperArm ? 'wider-sleeve-than-garment' : 'wider-sleeve'];
  },
  remedies: moreEaseUnlessMade,
};
