import { Injectable } from '@nestjs/common';
import { In, type EntityManager } from 'typeorm';
import { ATTEMPT, type AttemptRow } from '../outbox/attempt.entity.ts';
import { HAND_OFF, type HandOffRow } from '../outbox/hand-off.entity.ts';
import { PLANNER } from '../planners/planner.entity.ts';
import { CLAIM_MS, type Claimed } from './claimed.ts';
import type { Room } from './in-hand.ts';
import type { Settlement } from './settlement.ts';

/** What came of one try, to be written down. */
export interface Outcome {
  readonly attempt: AttemptRow;
  readonly plannerId: string;
  readonly settlement: Settlement;
}

/** Counts a try. */
const ONE_MORE = { attempts: () => 'attempts + 1' };

/** The outbox as those see it who empty it. Every method works within the unit of work whose manager it is given. */
@Injectable()
export class Deliveries {
  /**
   * Takes what is due and there is room for, the longest due first. Of several processes on one PostgreSQL each takes what
   * no other is just taking.
   */
  async claim(manager: EntityManager, room: Room, now: Date): Promise<Claimed[]> {
    const taken = new Map<string, number>();
    const handOffs = (await this.due(manager, room, now.toISOString())).filter(({ plannerId }) => {
      const mine = (taken.get(plannerId) ?? 0) + 1;
      taken.set(plannerId, mine);
      return mine <= room.freeFor(plannerId);
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

  /** Writes down what came of tries. What was erased meanwhile, with its sheet or its planner, stays erased. */
  async settle(manager: EntityManager, outcomes: readonly Outcome[]): Promise<void> {
    const left = await this.stillThere(manager, outcomes);
    if (left.length === 0) return;
    await manager.insert(
      ATTEMPT,
      left.map(({ attempt }) => attempt),
    );
    const arrived = left.filter(({ settlement }) => settlement.state === 'arrived');
    if (arrived.length > 0) {
      const ids = In(arrived.map(({ attempt }) => attempt.handOffId));
      const done = { state: 'arrived', nextTryAt: null, claimedUntil: null, ...ONE_MORE } as const;
      await manager.update(HAND_OFF, { id: ids }, done);
    }
    for (const outcome of left) {
      if (outcome.settlement.state !== 'arrived') await this.tryLater(manager, outcome);
    }
  }

  /** Lets go of what this process has in hand, or of everything: what the process before it had, where there is no other. */
  async release(manager: EntityManager, ids?: readonly string[]): Promise<void> {
    const which = ids === undefined ? { state: 'waiting' as const } : { id: In([...ids]) };
    await manager.update(HAND_OFF, which, { claimedUntil: null });
  }

  private async due(manager: EntityManager, { free, full }: Room, now: string): Promise<HandOffRow[]> {
    if (free <= 0) return [];
    const query = manager
      .createQueryBuilder(HAND_OFF, 'h')
      .innerJoin(PLANNER.options.name, 'p', 'p.id = h.plannerId')
      .where(`h.state = 'waiting' AND h.nextTryAt <= :now`, { now })
      .andWhere('(h.claimedUntil IS NULL OR h.claimedUntil <= :now)')
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

  /** Unless another process has seen it arrive. */
  private async tryLater(manager: EntityManager, { attempt, plannerId, settlement }: Outcome): Promise<void> {
    const { state, nextTryAt, plannerRestsUntil, plannerStops } = settlement;
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
