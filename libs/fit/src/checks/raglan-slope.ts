import { abs, constant, max, minus, quotient } from '#measure';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import { bodyIsMade, sleeveIsMade } from '../design/made-pieces.ts';
import { always, type CheckRule, hasSleeve, never } from './check.ts';
import { easeThat, those } from './cures.ts';

/** A length that a ratio is taken over is no less than this, mm: over nothing it would be boundless. */
const LEAST = constant(1);

/** How far the rise of a raglan on its sleeve differs from that on the body, `|D_S/D_B − 1|`: the edges are equally long, and slope apart. */
export const raglanSlope: CheckRule = {
  check: 'raglan-slope',
  dimension: 'sleeve-raglan-depth',
  wishes: ['raglan-slopes-alike', 'sleeve-and-body-as-wide'],
  kind: 'length',
  comfort: always,
  stretches: never,
  applies: (choices) => hasSleeve(choices) && CONSTRUCTIONS[choices.construction].comparesRises,
  limits: ({ choices: { rules }, armhole, sleeve }) => ({
    need: abs(minus(quotient(sleeve!.above!, max(armhole.onPiece, LEAST)), constant(1))),
    have: constant(rules['raglan-difference-most']),
  }),
  saysMargin: false,
  cures: ({ choices, ease }) => {
    if (bodyIsMade(choices) || sleeveIsMade(choices)) return ['ease-in', 'body-again'];
    return those(easeThat('more', ease) || easeThat('less', ease), 'another-construction');
  },
};
