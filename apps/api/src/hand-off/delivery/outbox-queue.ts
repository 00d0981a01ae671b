import { Injectable } from '@nestjs/common';
import { In, MoreThan, type EntityManager } from 'typeorm';
import { ATTEMPT, type AttemptRow } from '../outbox/attempt.entity.ts';
import { HAND_OFF, type HandOffRow } from '../outbox/hand-off.entity.ts';
import { PLANNER } from '../planners/planner.entity.ts';
import { tryUntil } from './back-off.ts';
import { CLAIM_MS, type Claim } from './claim.ts';
import type { Capacity } from './in-flight.ts';
import type { Transition } from './transition.ts';

/** What came of one attempt, to be written. */
export interface Outcome {
  readonly attempt: AttemptRow;
  readonly plannerId: string;
  readonly transition: Transition;
}

/** Counts an attempt. */
const ONE_MORE = { attempts: () => 'attempts + 1' };

/** The outbox as its workers use it. Every method works within the unit of work whose manager it is given. */
@Injectable()
export class OutboxQueue {
  /**
   * Claims what is due as far as the capacity goes, the longest due first. Of several processes on one PostgreSQL each claims
   * what no other is just claiming. A claim that ends further ahead than any can is of a clock that was set back since.
   */
  async claim(manager: EntityManager, capacity: Capacity, now: Date): Promise<Claim[]> {
    const taken = new Map<string, number>();
    const handOffs = (await this.due(manager, capacity, now)).filter(({ plannerId }) => {
      const mine = (taken.get(plannerId) ?? 0) + 1;
      taken.set(plannerId, mine);
      return mine <= capacity.freeFor(plannerId);
    });
    if (handOffs.length === 0) return [];
    const claimedUntil = new Date(now.getTime() + CLAIM_MS).toISOString();
    await manager.update(HAND_OFF, { id: In(handOffs.map(({ id }) => id)) }, { claimedUntil });
    const planners = await manager.findBy(PLANNER, { id: In([...taken.keys()]) });
    return handOffs.flatMap((handOff) => {
      const planner = planners.find(({ id }) => id === handOff.plannerId);
      return planner ? [{ handOff: { ...handOff, claimedUntil }, planner }] : [];
    });
  }

  /** Writes the outcomes of attempts. What was erased meanwhile, with its sheet or its planner, stays erased. */
  async record(manager: EntityManager, outcomes: readonly Outcome[]): Promise<void> {
    const left = await this.stillThere(manager, outcomes);
    if (left.length === 0) return;
    await manager.insert(
      ATTEMPT,
      left.map(({ attempt }) => attempt),
    );
    const arrived = left.filter(({ transition }) => transition.state === 'arrived');
    if (arrived.length > 0) {
      const ids = In(arrived.map(({ attempt }) => attempt.handOffId));
      const done = { state: 'arrived', nextTryAt: null, claimedUntil: null, ...ONE_MORE } as const;
      await manager.update(HAND_OFF, { id: ids }, done);
    }
    for (const outcome of left) {
      if (outcome.transition.state !== 'arrived') await this.tryLater(manager, outcome);
    }
  }

  /** Gives up these claims, or all: those of the process before, where there is no other. */
  async release(manager: EntityManager, ids?: readonly string[]): Promise<void> {
    const which = ids === undefined ? { state: 'waiting' as const } : { id: In([...ids]) };
    await manager.update(HAND_OFF, which, { claimedUntil: null });
  }

  /** Makes due what was made after `now`, and gives it its day. */
  async makeDueIfFromFuture(manager: EntityManager, now: Date): Promise<void> {
    const due = { nextTryAt: now.toISOString(), tryUntil: tryUntil(now) };
    await manager.update(HAND_OFF, { state: 'waiting', createdAt: MoreThan(now.toISOString()) }, due);
  }

  private async due(manager: EntityManager, { free, full }: Capacity, at: Date): Promise<HandOffRow[]> {
    if (free <= 0) return [];
    const now = at.toISOString();
    const never = new Date(at.getTime() + 2 * CLAIM_MS).toISOString();
    const query = manager
      .createQueryBuilder(HAND_OFF, 'h')
      .innerJoin(PLANNER.options.name, 'p', 'p.id = h.plannerId')
      .where(`h.state = 'waiting' AND h.nextTryAt <= :now`, { now })
      .andWhere('(h.claimedUntil IS NULL OR h.claimedUntil <= :now OR h.claimedUntil > :never)', { never })
      .andWhere(`p.state = 'active' AND (p.restingUntil IS NULL OR p.restingUntil <= :now)`)
      .orderBy('h.nextTryAt')
      .limit(free);
    if (full.length > 0) query.andWhere('h.plannerId NOT IN (:...full)', { full });
    if (manager.connection.options.type === 'postgres') {
      query.setLock('pessimistic_write', undefined, ['h']).setOnLocked('skip_locked');
    }
    return query.getMany();
  }

  private async stillThere(manager: EntityManager, outcomes: readonly Outcome[]): Promise<Outcome[]> {
    if (outcomes.length === 0) return [];
    const query = manager
      .createQueryBuilder(HAND_OFF, 'h')
      .select('h.id')
      .where({ id: In(outcomes.map(({ attempt }) => attempt.handOffId)) })
      .orderBy('h.id');
    if (manager.connection.options.type === 'postgres') query.setLock('pessimistic_write');
    const ids = new Set((await query.getMany()).map(({ id }) => id));
    return outcomes.filter(({ attempt }) => ids.has(attempt.handOffId));
  }

  /** Unless another process has recorded that it arrived. */
  private async tryLater(manager: EntityManager, { attempt, plannerId, transition }: Outcome): Promise<void> {
    const { state, nextTryAt, plannerRestsUntil, plannerStops } = transition;
    const change = { state, nextTryAt, claimedUntil: null, ...ONE_MORE };
    await manager.update(HAND_OFF, { id: attempt.handOffId, state: 'waiting' }, change);
    if (plannerRestsUntil !== null) {
      await manager.update(PLANNER, { id: plannerId }, { restingUntil: plannerRestsUntil });
    }
    if (plannerStops) {
      const stopped = { state: 'stopped', version: () => 'version + 1' } as const;
      await manager.update(PLANNER, { id: plannerId, state: 'active' }, stopped);
    }
  }
}
