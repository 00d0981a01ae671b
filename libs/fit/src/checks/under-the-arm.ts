import { abs, constant, minus } from '#measure';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import { always, type CheckRule, hasSleeve, never } from './check.ts';

/** The seam under the arm against the arm's own length below the garment's underarm. */
export const underTheArm: CheckRule = {
  check: 'under-the-arm',
  dimension: 'underarm-seam',
  wishes: ['arm-length-below-underarm', 'armhole-as-is'],
  kind: 'length',
  comfort: always,
  stretches: never,
  applies: (choices) => hasSleeve(choices) && CONSTRUCTIONS[choices.construction].sleeveTopIs === 'girth',
  limits: ({ choices: { rules }, sleeve }) => ({
    need: abs(minus(sleeve!.underarmSeam, sleeve!.ways!.underArm)),
    have: constant(rules['under-the-arm-difference-most']),
  }),
  saysMargin: false,
  cures: () => ['compare-sweater'],
};
