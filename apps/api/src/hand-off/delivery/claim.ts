import type { HandOffRow } from '../outbox/hand-off.entity.ts';
import type { PlannerRow } from '../planners/planner.entity.ts';

/** A hand-off that a process has to itself for a while, and its planner. */
export interface Claim {
  readonly handOff: HandOffRow;
  readonly planner: PlannerRow;
}

/** How long a process has a hand-off to itself: longer than the longest try, so that nobody else takes it meanwhile. */
export const CLAIM_MS = 30_000;
/** The longest attempt, and the time to record it. */
const ATTEMPT_MS = 22_000;

/** Whether a claim might end before an attempt begun now does: then it is left to the next claim. */
export const isExpiring = ({ handOff }: Claim, now: Date): boolean =>
  Date.parse(handOff.claimedUntil ?? '') - now.getTime() < ATTEMPT_MS;
