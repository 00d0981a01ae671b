import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { noSuch } from '../../http/no-such.ts';
import { ApiError } from '../../http/api-error.ts';
import { pageOf, rowsOf, type Page, type PageQuery } from '../../http/page.ts';
import { clock } from '../../clock/steady-clock.ts';
import { UnitOfWork } from '../../storage/unit-of-work.ts';
import { TargetSheetRepository } from '../../target-sheets/target-sheet.repository.ts';
import { OutboxWorker } from '../delivery/outbox-worker.ts';
import { Planners } from '../planners/planners.ts';
import type { AttemptRow } from './attempt.entity.ts';
import type { HandOffRow } from './hand-off.entity.ts';
import { Outbox, type HandOffFilter } from './outbox.ts';
import { packSheet, type Package } from './package.ts';

/** A hand-off with every try so far, the oldest first. */
export interface WithAttempts {
  readonly handOff: HandOffRow;
  readonly attempts: readonly AttemptRow[];
}

/** What was handed on, and what came of it. */
@Injectable()
export class HandOffs {
  constructor(
    private readonly work: UnitOfWork,
    private readonly planners: Planners,
    private readonly sheets: TargetSheetRepository,
    private readonly outbox: Outbox,
    private readonly worker: OutboxWorker,
  ) {}

  /** What would leave, exactly. @throws DomainError `not-found`, `planner-lacks`, `payload-too-large` */
  preview(makerId: string, plannerId: string, targetSheetId: string, origin: string): Promise<Package> {
    return this.work.read(async (manager) => {
      const planner = await this.planners.need(manager, makerId, plannerId);
      const sheet = await this.sheets.find(manager, makerId, targetSheetId);
      if (sheet !== null) return packSheet(sheet, planner.document, origin);
      throw noSuch('target sheet', '/v1/target-sheets');
    });
  }

  /** @throws DomainError `not-found` */
  read(makerId: string, id: string): Promise<WithAttempts> {
    return this.work.read(async (manager) => {
      const handOff = await this.need(manager, makerId, id);
      return { handOff, attempts: await this.outbox.attempts(manager, id) };
    });
  }

  async list(makerId: string, page: PageQuery, filter: HandOffFilter): Promise<Page<HandOffRow>> {
    const rows = rowsOf(page);
    return pageOf(await this.work.read((manager) => this.outbox.page(manager, makerId, filter, rows)), rows.limit);
  }

  /** Sends a dead one again, with the id it had. @throws DomainError `not-found`, `hand-off-not-dead` */
  async sendAgain(makerId: string, id: string): Promise<WithAttempts> {
    await this.work.write(async (manager) => {
      const { state } = await this.need(manager, makerId, id);
      if (await this.outbox.sendAgain(manager, makerId, id, clock.now())) return;
      throw new ApiError('hand-off-not-dead', `Only what was given up is sent again; this hand-off is ${state}.`);
    });
    this.worker.wake();
    return this.read(makerId, id);
  }

  /** Something that waited is due now. */
  wake(): void {
    this.worker.wake();
  }

  private async need(manager: EntityManager, makerId: string, id: string): Promise<HandOffRow> {
    const handOff = await this.outbox.find(manager, makerId, id);
    if (handOff !== null) return handOff;
    throw noSuch('hand-off', '/v1/hand-offs');
  }
}
