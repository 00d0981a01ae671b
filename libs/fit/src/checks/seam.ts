import { abs, constant, max, minus, times } from '#measure';
import type { GarmentModel } from '../model/garment-model.ts';
import type { SeamEdges } from '../messages/check-codes.ts';
import { type CheckRule, type Limits, never } from './check.ts';
import { edgesOf, madeSeams } from './made-seams.ts';
import { alternative, scarcest, scarcestOf } from './scarcest.ts';

/** By how much the edges of a seam differ, and by how much they may: `max(10, 3 %)`. */
function limitsOf(seam: SeamEdges, m: GarmentModel): Limits {
  const { rules } = m.choices;
  const [a, b] = edgesOf(seam, m);
  return {
    need: abs(minus(a, b)),
    have: max(constant(rules['seam-difference-most']), times(rules['seam-difference-share'], max(a, b))),
  };
}

/** The seam between made pieces that fits worst. */
export const seam: CheckRule = {
  check: 'seam',
  dimension: 'width',
  wishes: ['edges-join', 'pieces-as-made'],
  kind: 'length',
  comfort: never,
  stretches: never,
  applies: (choices) => madeSeams(choices).length > 0,
  limits: (m) => scarcest(madeSeams(m.choices).map((name) => alternative(name, limitsOf(name, m)))),
  saysMargin: false,
  details: ({ limits, v }) => ({
    edges: scarcestOf(limits.alternatives!, v).name as SeamEdges,
    differMm: v(limits.need),
  }),
  cures: ({ margin }) => (margin < 0 ? ['ease-in', 'one-edge-again'] : ['measure-edges']),
};
