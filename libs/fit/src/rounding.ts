import type { Nudge } from './nudging.ts';
import { crossing } from './root.ts';
import type { Row } from './slots.ts';

/** How far a number may go down and up, mm: `down` ≤ 0 ≤ `up`. */
export interface Leeway {
  readonly down: number;
  readonly up: number;
}

/** A check that must go on holding while a number is rounded: places of its need and have. */
export interface Holding {
  readonly need: number;
  readonly have: number;
}

/** The smallest margin of the checks in a worked-out row; what cannot be worked out does not hold. */
function smallestMargin(v: Row, holding: readonly Holding[]): number {
  let smallest = Infinity;
  for (const { need, have } of holding) {
    const margin = v[have]! - v[need]!;
    if (!(margin >= smallest)) smallest = margin;
    if (Number.isNaN(margin)) return -1;
  }
  return smallest;
}

/**
 * Draws each end of a leeway in until every check that holds at the value still holds there (model section 7).
 * Checks are taken to fail on one side only as the number moves away.
 */
export function drawnIn(nudge: Nudge, wanted: Leeway, holding: readonly Holding[]): Leeway {
  const touched = holding.filter(({ need, have }) => nudge.reaches(need) || nudge.reaches(have));
  if (touched.length === 0) return wanted;
  const spare = (by: number): number => smallestMargin(nudge.by(by), touched);
  const end = (by: number): number => {
    if (by === 0 || spare(by) >= -1e-9) return by;
    return by * crossing(1, 0, (share) => spare(share * by));
  };
  return { down: end(wanted.down), up: end(wanted.up) };
}
