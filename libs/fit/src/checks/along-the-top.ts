import { abs, constant, minus } from '#measure';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import { always, type CheckRule, hasSleeve, never } from './check.ts';

/** The seam under the arm against what the way from nape to cuff, over the shoulder, leaves of it. */
export const alongTheTop: CheckRule = {
  check: 'along-the-top',
  dimension: 'neck-to-cuff',
  wishes: ['arm-length-along-top', 'arm-length-below-underarm'],
  kind: 'length',
  comfort: always,
  stretches: never,
  applies: (choices) => hasSleeve(choices) && CONSTRUCTIONS[choices.construction].sleeveTopIs === 'girth',
  limits: ({ choices: { rules }, sleeve }) => ({
    need: abs(minus(sleeve!.underarmSeam, sleeve!.ways!.alongTop)),
    have: constant(rules['along-the-top-difference-most']),
  }),
  saysMargin: false,
  cures: () => ['compare-sweater'],
};
