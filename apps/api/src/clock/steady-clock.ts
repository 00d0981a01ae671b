/**
 * The time of day, which never goes back within a process: where the machine's clock is set back, it goes on from where it
 * was, as fast as time passes. What is due later stays due later by as much, and what came after is dated after.
 */
export class SteadyClock {
  private lastMs = -Infinity;
  private lastTick = 0;

  /** @param wall the machine's clock, in ms since 1970; @param ticks one that only ever runs forward, in ms */
  constructor(
    private readonly wall: () => number,
    private readonly ticks: () => number,
  ) {}

  now(): Date {
    const tick = this.ticks();
    this.lastMs = Math.max(this.wall(), Math.floor(this.lastMs + (tick - this.lastTick)));
    this.lastTick = tick;
    return new Date(this.lastMs);
  }
}

/** The process's own. What others compare with their clocks (signatures, expiry of keys) takes the machine's instead. */
export const clock = new SteadyClock(
  () => Date.now(),
  () => performance.now(),
);

/** Now, or the time given where the clock has been set back behind it. RFC 3339, UTC. */
export function nowButNotBefore(earlier: string): string {
  const now = clock.now().toISOString();
  return now < earlier ? earlier : now;
}
