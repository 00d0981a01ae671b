import type { HandOffRow } from '../outbox/hand-off.entity.ts';
import { backOffMs, nextTryAt, retryAfterMs } from './back-off.ts';
import type { PostResult } from './post.ts';
import { verdictOf } from './verdict.ts';

/** What follows from an attempt for the hand-off and for its planner. */
export interface Transition {
  readonly state: HandOffRow['state'];
  readonly nextTryAt: string | null;
  /** Before this the planner is sent nothing; null where it may be sent more at once. */
  readonly plannerRestsUntil: string | null;
  /** The planner wants nothing more. */
  readonly plannerStops: boolean;
}

const DONE = { nextTryAt: null, plannerRestsUntil: null, plannerStops: false };

/** What follows from an attempt that ended at `now`. `tries` counts it; `chance`, from 0 to 1, spreads what is tried again. */
export function transitionAfter(
  { tries, tryUntil }: { readonly tries: number; readonly tryUntil: string },
  result: PostResult,
  now: Date,
  chance: number,
): Transition {
  const verdict = verdictOf(result);
  if (verdict === 'arrived') return { ...DONE, state: 'arrived' };
  if (verdict === 'gone') return { ...DONE, state: 'dead', plannerStops: true };
  const asked = 'failure' in result ? 0 : retryAfterMs(result.retryAfter, now);
  const waitMs = Math.max(asked, backOffMs(tries, chance));
  const next = nextTryAt(now, tryUntil, waitMs);
  const plannerRestsUntil = verdict === 'slow-down' ? new Date(now.getTime() + waitMs).toISOString() : null;
  return { state: next === null ? 'dead' : 'waiting', nextTryAt: next, plannerRestsUntil, plannerStops: false };
}
