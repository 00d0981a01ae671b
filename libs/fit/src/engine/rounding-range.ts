import type { Quantity } from '#measure';
import { crossing } from './crossing.ts';
import type { Evaluation } from './evaluation.ts';

/** How far a number may go down and up, mm: `down` ≤ 0 ≤ `up`. */
export interface Leeway {
  readonly down: number;
  readonly up: number;
}

/** A margin within this of zero is zero: what is left of it is rounding, mm (ratios: 1). */
export const NO_MARGIN = 1e-9;

/** A constraint that moves by less than this for each mm does not move: it is rounding. */
const NO_RATE = 1e-9;

/**
 * Draws each end of a leeway in until every constraint that holds at the value still holds there, when what follows the number moves in
 * proportion and every other number of the sheet stays: in closed form where a constraint moves in proportion, by a search where it does not.
 * A constraint is taken to be broken on one side only as the number moves away.
 *
 * @param holding the constraints that hold at the value
 */
export function roundingRange(
  of: Quantity,
  wanted: Leeway,
  evaluation: Evaluation,
  holding: ReadonlySet<Quantity>,
): Leeway {
  const constrained = evaluation.constrained(of);
  const linear = constrained.linear.filter((constraint) => holding.has(constraint));
  const nonlinear = constrained.nonlinear.filter((constraint) => holding.has(constraint));
  let { down, up } = wanted;
  if (linear.length + nonlinear.length === 0) return { down, up };
  const rounding = evaluation.rounding(of, constrained);
  rounding.by(1);
  for (const constraint of linear) {
    const margin = evaluation.value(constraint);
    const rate = rounding.value(constraint) - margin;
    const end = Math.abs(margin) < NO_MARGIN ? 0 : -margin / rate;
    if (rate > NO_RATE) down = Math.max(down, end);
    else if (rate < -NO_RATE) up = Math.min(up, end);
  }
  // Sought a hair beyond zero: a constraint that only just holds may go on doing so for a while.
  const spare = (margin: number): number => (Number.isNaN(margin) ? -1 : margin + NO_MARGIN);
  // One constraint after the other: the least of them all has kinks, and lies flat where another only just holds.
  const end = (wantedEnd: number): number => {
    let by = wantedEnd;
    if (by === 0) return by;
    rounding.by(by);
    for (const constraint of nonlinear) {
      const there = spare(rounding.value(constraint));
      if (there >= 0) continue;
      const at = (x: number): number => spare(rounding.by(x).value(constraint));
      by = crossing([by, there], [0, spare(evaluation.value(constraint))], at, NO_MARGIN / 2);
      rounding.by(by);
    }
    return by;
  };
  return { down: end(down), up: end(up) };
}
