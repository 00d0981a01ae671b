import { Injectable } from '@nestjs/common';
import { type EntityManager } from 'typeorm';
import { tryUntil } from '../delivery/back-off.ts';
import { ATTEMPT, type AttemptRow } from './attempt.entity.ts';
import { HAND_OFF, type HandOffRow, type HandOffState } from './hand-off.entity.ts';
import { inPage, type PageRows } from '../../storage/in-page.ts';

/** Which hand-offs are asked for. */
export interface HandOffFilter {
  readonly plannerId?: string | undefined;
  readonly targetSheetId?: string | undefined;
  readonly state?: HandOffState | undefined;
}

/** What was handed on and what came of it. Every method works within the unit of work whose manager it is given. */
@Injectable()
export class Outbox {
  async insert(manager: EntityManager, rows: readonly HandOffRow[]): Promise<void> {
    if (rows.length > 0) await manager.insert(HAND_OFF, [...rows]);
  }

  find(manager: EntityManager, makerId: string, id: string): Promise<HandOffRow | null> {
    return manager.findOneBy(HAND_OFF, { makerId, id });
  }

  /** What was made with these keys before. */
  async findByKeys(
    manager: EntityManager,
    requests: readonly Pick<HandOffRow, 'makerId' | 'idempotencyKey'>[],
  ): Promise<HandOffRow[]> {
    const where = requests.flatMap(({ makerId, idempotencyKey }) =>
      idempotencyKey === null ? [] : [{ makerId, idempotencyKey }],
    );
    return where.length === 0 ? [] : manager.findBy(HAND_OFF, where);
  }

  /** The newest first, one more than asked for. */
  page(manager: EntityManager, makerId: string, filter: HandOffFilter, rows: PageRows): Promise<HandOffRow[]> {
    const given = Object.fromEntries(Object.entries(filter).filter(([, value]) => value !== undefined));
    return manager.find(HAND_OFF, {
      where: { makerId, ...given, ...inPage<HandOffRow>(rows, 'createdAt') },
      order: { id: 'DESC' },
      take: rows.limit + 1,
    });
  }

  /** The oldest first. */
  attempts(manager: EntityManager, handOffId: string): Promise<AttemptRow[]> {
    return manager.find(ATTEMPT, { where: { handOffId }, order: { id: 'ASC' } });
  }

  /** A dead one is due again, for a day. False when it is not dead. */
  async sendAgain(manager: EntityManager, makerId: string, id: string, now: Date): Promise<boolean> {
    const again = { state: 'waiting', nextTryAt: now.toISOString(), tryUntil: tryUntil(now) } as const;
    const { affected } = await manager.update(HAND_OFF, { makerId, id, state: 'dead' }, again);
    return affected === 1;
  }

  /** Whatever waits for a planner is due now, and has its day again. */
  async revive(manager: EntityManager, plannerId: string, now: Date): Promise<void> {
    const again = { nextTryAt: now.toISOString(), tryUntil: tryUntil(now) };
    await manager.update(HAND_OFF, { plannerId, state: 'waiting' }, again);
  }
}
