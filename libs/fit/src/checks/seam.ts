import { abs, constant, max, minus, times } from '#measure';
import type { Choices } from '../design/choices.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { bodyIsMade, sleeveIsMade } from '../design/made-pieces.ts';
import type { SeamEdges } from '../messages/check-codes.ts';
import { NONE } from '../messages/none.ts';
import { type CheckRule, hasSleeve, type Limits, never } from './check.ts';
import { edgesOf, madeSeams } from './made-seams.ts';
import { alternative, scarcest, scarcestOf } from './scarcest.ts';
import { easeThat, those } from './cures.ts';

const compares = (choices: Choices): boolean => madeSeams(choices).length > 0;

/** By how much the edges of a seam differ, and by how much they may: `max(10, 3 %)`. */
function limitsOf(seam: SeamEdges, m: GarmentModel): Limits {
  const { rules } = m.choices;
  const [a, b] = edgesOf(seam, m);
  return {
    need: abs(minus(a, b)),
    have: max(constant(rules['seam-difference-most']), times(rules['seam-difference-share'], max(a, b))),
  };
}

/** How the rises of a raglan on sleeve and body compare. */
function rises({ armhole, sleeve, choices }: GarmentModel): Limits {
  return {
    need: abs(minus(sleeve!.above!, armhole.onPiece)),
    have: times(choices.rules['raglan-difference-most'], armhole.onPiece),
  };
}

/** The seam between made pieces that fits worst; of a raglan with nothing made, its two rises. */
export const seam: CheckRule = {
  check: 'seam',
  dimension: 'width',
  wishes: ['edges-join', 'pieces-as-made'],
  kind: 'length',
  comfort: (choices) => !compares(choices),
  stretches: never,
  applies: (choices) => compares(choices) || (hasSleeve(choices) && CONSTRUCTIONS[choices.construction].comparesRises),
  limits: (m) =>
    compares(m.choices) ? scarcest(madeSeams(m.choices).map((name) => alternative(name, limitsOf(name, m)))) : rises(m),
  saysMargin: false,
  code: ({ alternatives }) => (alternatives ? 'seam' : 'raglan-rises'),
  details: ({ limits, v }) =>
    limits.alternatives
      ? { edges: scarcestOf(limits.alternatives, v).name as SeamEdges, differMm: v(limits.need) }
      : NONE,
  cures: ({ choices, limits, margin, ease }) => {
    if (limits.alternatives) return margin < 0 ? ['ease-in', 'one-edge-again'] : ['measure-edges'];
    if (bodyIsMade(choices) || sleeveIsMade(choices)) return ['ease-in', 'body-again'];
    return those(easeThat('more', ease) || easeThat('less', ease), 'another-construction');
  },
};
