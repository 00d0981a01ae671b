import { randomInt } from 'node:crypto';
import { v7 } from 'uuid';

/** An id further ahead than this was not made by a clock that was set back: it was read in from elsewhere. */
const MOST_AHEAD_MS = 366 * 86_400_000;

const V7 = /^([0-9a-f]{8})-([0-9a-f]{4})-7/;

/** Where the ids of this process stand: a time in ms and a count within it (RFC 9562, section 6.2, method 1). */
const state = { msecs: 0, seq: 0 };

/** A UUID v7 that sorts after every one made here before, also where the clock has been set back. */
export function newId(): string {
  const now = Date.now();
  if (now > state.msecs) {
    state.msecs = now;
    state.seq = randomInt(2 ** 31);
  } else if (++state.seq === 2 ** 32) {
    state.msecs++;
    state.seq = 0;
  }
  return v7({ msecs: state.msecs, seq: state.seq });
}

/** Has later ids sort after this one. */
export function continueIdsAfter(id: string): void {
  const [, high, low] = V7.exec(id) ?? [];
  if (high === undefined || low === undefined) return;
  const msecs = Number.parseInt(high + low, 16);
  if (msecs < state.msecs || msecs - Date.now() > MOST_AHEAD_MS) return;
  state.msecs = msecs + 1;
  state.seq = 0;
}
