import { type CheckRule, marginOf, SPENT } from './check-rules.ts';
import type { Nudging } from './nudging.ts';
import { crossing } from './root.ts';
import type { Row } from './slots.ts';

/** How far a number may go down and up, mm: `down` ≤ 0 ≤ `up`. */
export interface Leeway {
  readonly down: number;
  readonly up: number;
}

/** The smallest margin of the checks in a worked-out row; what cannot be worked out does not hold. */
function smallestMargin(v: Row, checks: readonly CheckRule[]): number {
  let smallest = Infinity;
  for (const check of checks) {
    const margin = v[check.have]! - v[check.need]!;
    if (!(margin >= smallest)) smallest = margin;
    if (Number.isNaN(margin)) return -1;
  }
  return smallest;
}

/**
 * Draws each end of a leeway in until every check that holds at the value still holds there: in closed
 * form where a check's margin moves in proportion with the number, by trial where it bends on the way.
 * Checks are taken to fail on one side only as the number moves away.
 *
 * @param slot the number's place
 * @param holding the checks that hold at the value
 */
export function drawnIn(slot: number, wanted: Leeway, nudging: Nudging, holding: ReadonlySet<CheckRule>): Leeway {
  const { straight, bent, toBent } = nudging.hanging(slot);
  let { down, up } = wanted;
  const moved = nudging.followers(slot);
  for (const check of straight) {
    if (!holding.has(check)) continue;
    const rate = moved.slope(check.have) - moved.slope(check.need);
    const spent = -marginOf(check, nudging.base) / rate;
    if (rate > 0) down = Math.max(down, spent);
    else if (rate < 0) up = Math.min(up, spent);
  }
  const tried = bent.filter((check) => holding.has(check));
  if (tried.length === 0) return { down, up };
  const nudge = nudging.nudge(slot, toBent);
  // Sought a hair beyond nothing: a check that only just holds may go on doing so for a while.
  const spare = (v: Row): number => smallestMargin(v, tried) + SPENT;
  const end = (by: number): number => {
    if (by === 0) return by;
    const there = spare(nudge.by(by));
    return there >= 0
      ? by
      : crossing([by, there], [0, spare(nudging.base)], (between) => spare(nudge.by(between)), SPENT / 2);
  };
  return { down: end(down), up: end(up) };
}
