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

/**
 * Draws each end of a leeway in until every constraint that holds at the value still holds there: in closed form where a
 * constraint moves in proportion with the number, by a search where it does not. A constraint is taken to be broken on one side
 * only as the number moves away.
 *
 * @param holding the constraints that hold at the value
 */
export function roundingRange(
  of: Quantity,
  wanted: Leeway,
  evaluation: Evaluation,
  holding: ReadonlySet<Quantity>,
): Leeway {
  const { linear, nonlinear, path } = evaluation.constrained(of);
  let { down, up } = wanted;
  for (const constraint of linear) {
    if (!holding.has(constraint)) continue;
    const rate = evaluation.derivative(constraint, of);
    const margin = evaluation.value(constraint);
    const end = Math.abs(margin) < NO_MARGIN ? 0 : -margin / rate;
    if (rate > 0) down = Math.max(down, end);
    else if (rate < 0) up = Math.min(up, end);
  }
  const searched = nonlinear.filter((constraint) => holding.has(constraint));
  if (searched.length === 0) return { down, up };
  const perturbation = evaluation.perturbation(of, path);
  // Sought a hair beyond zero: a constraint that only just holds may go on doing so for a while.
  const spare = (margin: number): number => (Number.isNaN(margin) ? -1 : margin + NO_MARGIN);
  // One constraint after the other: the least of them all has kinks, and lies flat where another only just holds.
  const end = (wantedEnd: number): number => {
    let by = wantedEnd;
    if (by === 0) return by;
    perturbation.by(by);
    for (const constraint of searched) {
      const there = spare(perturbation.value(constraint));
      if (there >= 0) continue;
      const at = (x: number): number => spare(perturbation.by(x).value(constraint));
      by = crossing([by, there], [0, spare(evaluation.value(constraint))], at, NO_MARGIN / 2);
      perturbation.by(by);
    }
    return by;
  };
  return { down: end(down), up: end(up) };
}
