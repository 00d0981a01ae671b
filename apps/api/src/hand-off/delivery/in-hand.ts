import type { Claimed } from './claimed.ts';
import { Lane } from './lane.ts';

/** How many hand-offs a process has in hand at most, in all and for one planner: one that hangs holds up no other. */
const MOST = 512;
const MOST_FOR_ONE = 64;
/** How many of them are on their way to one planner at the same time. */
const MOST_AT_ONCE = 16;

/** How much more can be taken in hand. */
export interface Room {
  readonly free: number;
  /** The planners for whom nothing more can be taken. */
  readonly full: readonly string[];
  freeFor(plannerId: string): number;
}

/** What a process has taken in hand and not yet finished with. */
export class InHand {
  private readonly lanes = new Map<string, Lane>();
  private readonly work = new Map<Claimed, Promise<void>>();

  /** Does the work of a hand-off when its planner's turn comes. `work` does not throw. */
  take(claimed: Claimed, work: () => Promise<void>): void {
    const { id } = claimed.planner;
    const lane = this.lanes.get(id) ?? new Lane(MOST_AT_ONCE);
    this.lanes.set(id, lane);
    const done = lane.pass(work).then(() => {
      this.work.delete(claimed);
      if (lane.isEmpty) this.lanes.delete(id);
    });
    this.work.set(claimed, done);
  }

  get room(): Room {
    const counts = new Map<string, number>();
    for (const { planner } of this.work.keys()) counts.set(planner.id, (counts.get(planner.id) ?? 0) + 1);
    return {
      free: MOST - this.work.size,
      full: [...counts].filter(([, count]) => count >= MOST_FOR_ONE).map(([id]) => id),
      freeFor: (plannerId) => MOST_FOR_ONE - (counts.get(plannerId) ?? 0),
    };
  }

  get ids(): string[] {
    return [...this.work.keys()].map(({ handOff }) => handOff.id);
  }

  async empty(): Promise<void> {
    await Promise.all(this.work.values());
  }
}
