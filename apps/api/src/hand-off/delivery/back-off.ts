/** A hand-off is tried for a day; then it is left for the maker to send again. */
const TRIED_FOR_MS = 24 * 3600 * 1000;

const FIRST_MS = 5_000;
const LEAST_MS = 1_000;

/** Until when a hand-off is tried that is handed on, or sent again, now. RFC 3339. */
export const tryUntil = (now: Date): string => new Date(now.getTime() + TRIED_FOR_MS).toISOString();

/**
 * How long to wait after the `tries`th try has failed: anything up to 5 s, 10 s, 20 s … doubling to a day, by chance, so
 * that many hand-offs that failed together do not come back together ("full jitter"). `chance` is from 0 to 1.
 */
export function backOffMs(tries: number, chance: number): number {
  const most = Math.min(FIRST_MS * 2 ** Math.min(tries - 1, 30), TRIED_FOR_MS);
  return Math.max(LEAST_MS, Math.round(most * chance));
}

/**
 * Reads the header Retry-After (RFC 9110, section 10.2.3), seconds or a date, as milliseconds from now: a day at most,
 * 0 where it is absent, past or not understood.
 */
export function retryAfterMs(header: string | null, now: Date): number {
  const text = header?.trim() ?? '';
  const wait = /^\d+$/.test(text) ? Number(text) * 1000 : Date.parse(text) - now.getTime();
  return Number.isNaN(wait) ? 0 : Math.min(Math.max(wait, 0), TRIED_FOR_MS);
}

/** When to try next; null when the time is up. A last try falls at its very end. RFC 3339. */
export function nextTryAt(now: Date, until: string, waitMs: number): string | null {
  const end = Date.parse(until);
  return now.getTime() >= end ? null : new Date(Math.min(now.getTime() + waitMs, end)).toISOString();
}
