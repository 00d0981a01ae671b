import type { Claim } from './claim.ts';
import { ConcurrencyLimit } from './concurrency-limit.ts';

/** How many claims a process holds at most, in all and for one planner: one that hangs holds up no other. */
const MOST = 512;
const MOST_PER_PLANNER = 64;
/** How many requests to one planner are under way at the same time. */
const CONCURRENT_PER_PLANNER = 16;

/** How much more can be claimed. */
export interface Capacity {
  readonly free: number;
  /** The planners for whom nothing more can be claimed. */
  readonly full: readonly string[];
  freeFor(plannerId: string): number;
}

/** The claims that a process holds, each until its work is done. */
export class InFlight {
  private readonly limits = new Map<string, ConcurrencyLimit>();
  private readonly work = new Map<Claim, Promise<void>>();

  /** Does the work of a claim as soon as its planner's limit allows. `work` does not throw. */
  add(claim: Claim, work: () => Promise<void>): void {
    const { id } = claim.planner;
    const limit = this.limits.get(id) ?? new ConcurrencyLimit(CONCURRENT_PER_PLANNER);
    this.limits.set(id, limit);
    const done = limit.run(work).then(() => {
      this.work.delete(claim);
      if (limit.isIdle) this.limits.delete(id);
    });
    this.work.set(claim, done);
  }

  get capacity(): Capacity {
    const counts = new Map<string, number>();
    for (const { planner } of this.work.keys()) counts.set(planner.id, (counts.get(planner.id) ?? 0) + 1);
    return {
      free: MOST - this.work.size,
      full: [...counts].filter(([, count]) => count >= MOST_PER_PLANNER).map(([id]) => id),
      freeFor: (plannerId) => MOST_PER_PLANNER - (counts.get(plannerId) ?? 0),
    };
  }

  /** The hand-offs that are claimed. */
  get ids(): string[] {
    return [...this.work.keys()].map(({ handOff }) => handOff.id);
  }

  async drained(): Promise<void> {
    await Promise.all(this.work.values());
  }
}
