import { Injectable } from '@nestjs/common';
import { In, type EntityManager } from 'typeorm';
import { ATTEMPT, type AttemptRow } from '../outbox/attempt.entity.ts';
import { HAND_OFF, type HandOffRow } from '../outbox/hand-off.entity.ts';
import { PLANNER, type PlannerRow } from '../planners/planner.entity.ts';
import type { Settlement } from './settlement.ts';

/** A hand-off taken in hand, and the planner it goes to. */
export interface Claimed {
  readonly handOff: HandOffRow;
  readonly planner: PlannerRow;
}

/** What came of one try, to be written down. */
export interface Outcome {
  readonly attempt: AttemptRow;
  readonly plannerId: string;
  readonly settlement: Settlement;
}

/** How long a process has a hand-off to itself: longer than the longest try, so that nobody else takes it meanwhile. */
const CLAIM_MS = 30_000;

/** The outbox as those see it who empty it. Every method works within the unit of work whose manager it is given. */
@Injectable()
export class Deliveries {
  /**
   * Takes what is due, the longest due first: at most `free` in all, and for a planner no more than `freeFor` says. Of
   * several processes on one PostgreSQL each takes what no other is just taking.
   */
  async claim(
    manager: EntityManager,
    free: number,
    freeFor: (plannerId: string) => number,
    now: Date,
  ): Promise<Claimed[]> {
    const taken = new Map<string, number>();
    const handOffs = (await this.due(manager, free, now.toISOString())).filter(({ plannerId }) => {
      const mine = (taken.get(plannerId) ?? 0) + 1;
      taken.set(plannerId, mine);
      return mine <= freeFor(plannerId);
    });
    if (handOffs.length === 0) return [];
    const claimedUntil = new Date(now.getTime() + CLAIM_MS).toISOString();
    await manager.update(HAND_OFF, { id: In(handOffs.map(({ id }) => id)) }, { claimedUntil });
    const planners = await manager.findBy(PLANNER, { id: In([...taken.keys()]) });
    return handOffs.flatMap((handOff) => {
      const planner = planners.find(({ id }) => id === handOff.plannerId);
      return planner ? [{ handOff, planner }] : [];
    });
  }

  /** Writes down what came of tries. What was erased meanwhile, with its sheet or its planner, stays erased. */
  async settle(manager: EntityManager, outcomes: readonly Outcome[]): Promise<void> {
    const left = await this.stillThere(manager, outcomes);
    if (left.length === 0) return;
    const attempts = left.map(({ attempt }) => attempt);
    await manager.insert(ATTEMPT, attempts);
    await this.count(manager, attempts);
    const arrived = left.filter(({ settlement }) => settlement.state === 'arrived');
    const done = { state: 'arrived', nextTryAt: null, claimedUntil: null } as const;
    await manager.update(HAND_OFF, { id: In(arrived.map(({ attempt }) => attempt.handOffId)) }, done);
    for (const outcome of left) {
      if (outcome.settlement.state !== 'arrived') await this.tryLater(manager, outcome);
    }
  }

  /** Lets go of what this process has in hand, or of everything: what the process before it had, where there is no other. */
  async release(manager: EntityManager, ids?: readonly string[]): Promise<void> {
    const which = ids === undefined ? { state: 'waiting' as const } : { id: In([...ids]) };
    await manager.update(HAND_OFF, which, { claimedUntil: null });
  }

  private due(manager: EntityManager, limit: number, now: string): Promise<HandOffRow[]> {
    const query = manager
      .createQueryBuilder(HAND_OFF, 'h')
      .innerJoin(PLANNER.options.name, 'p', 'p.id = h.plannerId')
      .where(`h.state = 'waiting' AND h.nextTryAt <= :now`, { now })
      .andWhere('(h.claimedUntil IS NULL OR h.claimedUntil <= :now)')
      .andWhere(`p.state = 'active' AND (p.restingUntil IS NULL OR p.restingUntil <= :now)`)
      .orderBy('h.nextTryAt')
      .limit(limit);
    if (manager.connection.options.type === 'postgres') {
      query.setLock('pessimistic_write', undefined, ['h']).setOnLocked('skip_locked');
    }
    return query.getMany();
  }

  private async stillThere(manager: EntityManager, outcomes: readonly Outcome[]): Promise<Outcome[]> {
    const query = manager
      .createQueryBuilder(HAND_OFF, 'h')
      .select('h.id')
      .where({ id: In(outcomes.map(({ attempt }) => attempt.handOffId)) })
      .orderBy('h.id');
    if (manager.connection.options.type === 'postgres') query.setLock('pessimistic_write');
    const ids = new Set((await query.getMany()).map(({ id }) => id));
    return outcomes.filter(({ attempt }) => ids.has(attempt.handOffId));
  }

  private async count(manager: EntityManager, attempts: readonly AttemptRow[]): Promise<void> {
    await manager
      .createQueryBuilder()
      .update(HAND_OFF)
      .set({ attempts: () => 'attempts + 1' })
      .where({ id: In(attempts.map(({ handOffId }) => handOffId)) })
      .execute();
  }

  /** Unless another process has seen it arrive. */
  private async tryLater(manager: EntityManager, { attempt, plannerId, settlement }: Outcome): Promise<void> {
    const { state, nextTryAt, plannerRestsUntil, plannerStops } = settlement;
    await manager.update(
      HAND_OFF,
      { id: attempt.handOffId, state: 'waiting' },
      { state, nextTryAt, claimedUntil: null },
    );
    if (plannerRestsUntil !== null) {
      await manager.update(PLANNER, { id: plannerId }, { restingUntil: plannerRestsUntil });
    }
    if (plannerStops) {
      const stopped = { state: 'stopped', version: () => 'version + 1' } as const;
      await manager.update(PLANNER, { id: plannerId, state: 'active' }, stopped);
    }
  }
}
