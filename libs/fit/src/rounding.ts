import { type CheckRule, marginOf, SPENT } from './check-rules.ts';
import type { Nudging } from './nudging.ts';
import { crossing } from './root.ts';
import type { Row } from './slots.ts';

/** How far a number may go down and up, mm: `down` ≤ 0 ≤ `up`. */
export interface Leeway {
  readonly down: number;
  readonly up: number;
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
  const spare = (check: CheckRule, v: Row): number => {
    const margin = v[check.have]! - v[check.need]!;
    return Number.isNaN(margin) ? -1 : margin + SPENT;
  };
  // One check after the other: the least of them all has kinks, and lies flat where another only just holds.
  const end = (wanted: number): number => {
    let by = wanted;
    if (by === 0) return by;
    const row = nudge.by(by);
    for (const check of tried) {
      const there = spare(check, row);
      if (there >= 0) continue;
      by = crossing([by, there], [0, spare(check, nudging.base)], (x) => spare(check, nudge.by(x)), SPENT / 2);
      nudge.by(by);
    }
    return by;
  };
  return { down: end(down), up: end(up) };
}
