import { Injectable } from '@nestjs/common';
import { QueryFailedError, type EntityManager } from 'typeorm';
import { v7 as uuid } from 'uuid';
import { DomainError } from '#measure';
import { idOfCursor, pageOf, type Page, type PageQuery } from '../../http/page.ts';
import { UnitOfWork } from '../../storage/unit-of-work.ts';
import { TargetSheetRepository } from '../../target-sheets/target-sheet.repository.ts';
import type { TargetSheetRow } from '../../target-sheets/target-sheet.entity.ts';
import { TargetSheets, type InputIds } from '../../target-sheets/target-sheets.ts';
import type { SheetChoices } from '../../target-sheets/sheet-request.ts';
import { tryUntil } from '../delivery/back-off.ts';
import { DeliveryRound } from '../delivery/delivery-round.ts';
import type { PlannerRow } from '../planners/planner.entity.ts';
import { Planners } from '../planners/planners.ts';
import type { AttemptRow } from './attempt.entity.ts';
import type { HandOffRow } from './hand-off.entity.ts';
import { fingerprintOf } from './idempotency-key.ts';
import { Outbox, type HandOffFilter } from './outbox.ts';
import { packSheet, type Package } from './package.ts';

/** How a request to hand on is known again, and where planners reach this service. */
export interface Asking {
  readonly idempotencyKey: string | null;
  readonly origin: string;
}

/** A hand-off with every try so far, the oldest first. */
export interface WithAttempts {
  readonly handOff: HandOffRow;
  readonly attempts: readonly AttemptRow[];
}

/** What a maker hands on to planners. */
@Injectable()
export class HandOffs {
  constructor(
    private readonly work: UnitOfWork,
    private readonly planners: Planners,
    private readonly sheets: TargetSheets,
    private readonly keptSheets: TargetSheetRepository,
    private readonly outbox: Outbox,
    private readonly round: DeliveryRound,
  ) {}

  /** What would leave, exactly. @throws DomainError `not-found`, `planner-lacks`, `payload-too-large` */
  preview(makerId: string, plannerId: string, targetSheetId: string, origin: string): Promise<Package> {
    return this.work.read(async (manager) => {
      const planner = await this.planners.need(manager, makerId, plannerId);
      return packSheet(await this.sheet(manager, makerId, targetSheetId), planner.document, origin);
    });
  }

  /**
   * Hands a kept sheet on. The same request with the same key is answered as the first was.
   *
   * @throws DomainError `not-found`, `planner-without-address`, `planner-stopped`, `planner-lacks`,
   * `payload-too-large`, `idempotency-key-reused`
   */
  send(makerId: string, targetSheetId: string, plannerId: string, asking: Asking): Promise<HandOffRow> {
    const fingerprint = fingerprintOf({ targetSheetId, plannerId });
    return this.once(makerId, fingerprint, asking, async (manager) => {
      const sheet = await this.sheet(manager, makerId, targetSheetId);
      return this.handOn(sheet, await this.addressed(manager, makerId, plannerId), asking);
    });
  }

  /** Makes a sheet, keeps it and hands it on: all of it is written, or nothing. @throws DomainError as `send`, and of the sheet */
  makeAndSend(
    makerId: string,
    plannerId: string,
    ids: InputIds,
    choices: SheetChoices,
    asking: Asking,
  ): Promise<HandOffRow> {
    const fingerprint = fingerprintOf({ plannerId, ids, choices });
    return this.once(makerId, fingerprint, asking, async (manager) => {
      const planner = await this.addressed(manager, makerId, plannerId);
      const sheet = await this.sheets.keepWithin(manager, makerId, ids, choices);
      return this.handOn(sheet, planner, asking);
    });
  }

  /** @throws DomainError `not-found` */
  read(makerId: string, id: string): Promise<WithAttempts> {
    return this.work.read(async (manager) => {
      const handOff = await this.need(manager, makerId, id);
      return { handOff, attempts: await this.outbox.attempts(manager, id) };
    });
  }

  async list(makerId: string, { limit, cursor }: PageQuery, filter: HandOffFilter): Promise<Page<HandOffRow>> {
    const before = cursor === undefined ? undefined : idOfCursor(cursor);
    return pageOf(await this.work.read((manager) => this.outbox.page(manager, makerId, filter, limit, before)), limit);
  }

  /** Sends a dead one again, with the id it had. @throws DomainError `not-found`, `hand-off-not-dead` */
  async sendAgain(makerId: string, id: string): Promise<WithAttempts> {
    await this.work.write(async (manager) => {
      const { state } = await this.need(manager, makerId, id);
      if (await this.outbox.sendAgain(manager, makerId, id, new Date())) return;
      throw new DomainError('hand-off-not-dead', `Only what was given up is sent again; this hand-off is ${state}.`);
    });
    this.round.nudge();
    return this.read(makerId, id);
  }

  /** Something that waited is due now. */
  nudge(): void {
    this.round.nudge();
  }

  private async once(
    makerId: string,
    fingerprint: string,
    { idempotencyKey }: Asking,
    make: (manager: EntityManager) => Promise<Omit<HandOffRow, 'fingerprint'>>,
  ): Promise<HandOffRow> {
    const handOff = await atSecondSight(() =>
      this.work.write(async (manager) => {
        const first = idempotencyKey && (await this.outbox.findByKey(manager, makerId, idempotencyKey));
        if (first && first.fingerprint === fingerprint) return first;
        if (first) {
          throw new DomainError('idempotency-key-reused', 'This Idempotency-Key was sent with another request before.');
        }
        const row = { ...(await make(manager)), fingerprint };
        await this.outbox.insert(manager, row);
        return row;
      }),
    );
    this.round.nudge();
    return handOff;
  }

  private handOn(
    { id, sheet }: TargetSheetRow,
    planner: PlannerRow,
    { idempotencyKey, origin }: Asking,
  ): Omit<HandOffRow, 'fingerprint'> {
    const now = new Date();
    const { contentType, body } = packSheet({ id, sheet }, planner.document, origin);
    return {
      id: uuid(),
      makerId: planner.makerId,
      plannerId: planner.id,
      targetSheetId: id,
      createdAt: now.toISOString(),
      contentType,
      body,
      state: 'waiting',
      attempts: 0,
      nextTryAt: now.toISOString(),
      tryUntil: tryUntil(now),
      claimedUntil: null,
      idempotencyKey,
    };
  }

  /** A planner that something can be sent to. */
  private async addressed(manager: EntityManager, makerId: string, id: string): Promise<PlannerRow> {
    const planner = await this.planners.need(manager, makerId, id);
    const { title, address } = planner.document;
    if (address === null) {
      throw new DomainError(
        'planner-without-address',
        `${title} has no address to send to; give it one, or hand the sheet on by hand.`,
      );
    }
    if (planner.state !== 'stopped') return planner;
    throw new DomainError(
      'planner-stopped',
      `${title} answered that it wants nothing more (410). Resume it to send again.`,
    );
  }

  private async sheet(manager: EntityManager, makerId: string, id: string): Promise<TargetSheetRow> {
    const sheet = await this.keptSheets.find(manager, makerId, id);
    if (sheet !== null) return sheet;
    throw new DomainError('not-found', 'There is no target sheet with this id.');
  }

  private async need(manager: EntityManager, makerId: string, id: string): Promise<HandOffRow> {
    const handOff = await this.outbox.find(manager, makerId, id);
    if (handOff !== null) return handOff;
    throw new DomainError('not-found', 'There is no hand-off with this id.');
  }
}

/** PostgreSQL's codes for what another unit of work did at the same moment: the same key, or what it refers to erased. */
const OVERTAKEN = ['23505', '23503'];

/** Looks again where another unit of work came between: now it can be seen. */
async function atSecondSight<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const { code } = (error instanceof QueryFailedError ? error.driverError : {}) as { code?: string };
    if (!OVERTAKEN.includes(code ?? '')) throw error;
    return work();
  }
}
