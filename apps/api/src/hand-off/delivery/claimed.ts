import type { HandOffRow } from '../outbox/hand-off.entity.ts';
import type { PlannerRow } from '../planners/planner.entity.ts';

/** A hand-off taken in hand, and the planner it goes to. */
export interface Claimed {
  readonly handOff: HandOffRow;
  readonly planner: PlannerRow;
}

/** How long a process has a hand-off to itself: longer than the longest try, so that nobody else takes it meanwhile. */
export const CLAIM_MS = 30_000;
/** The longest try, and the time to write down what came of it. */
const TRY_MS = 22_000;

/** Whether a claim might end before a try begun now does: then it is left to whoever takes it next. */
export const isLapsing = ({ handOff }: Claimed, now: Date): boolean =>
  Date.parse(handOff.claimedUntil ?? '') - now.getTime() < TRY_MS;
