import { Injectable } from '@nestjs/common';
import type { EntityManager, EntitySchema } from 'typeorm';
import { ApiError } from '../../http/api-error.ts';
import { expectVersion, requireIfMatch } from '../../http/if-match.ts';
import type { Page, PageQuery } from '../../http/page.ts';
import { KeptRecords } from '../../records/kept-records.ts';
import type { RecordRow } from '../../records/record.entity.ts';
import { RecordRepository } from '../../records/record.repository.ts';
import { clock, nowButNotBefore } from '../../clock/steady-clock.ts';
import { newId } from '../../storage/new-id.ts';
import type { IdempotentRequest } from '../../idempotency/idempotent-request.ts';
import { UnitOfWork } from '../../storage/unit-of-work.ts';
import { Outbox } from '../outbox/outbox.ts';
import type { PlannerDocument } from './planner-document.ts';
import { PLANNER, type PlannerRow, type PlannerState } from './planner.entity.ts';
import { PlannerSecrets } from './planner-secrets.ts';

/** A planner, and a new signing secret where one was made: it is shown this once. */
export interface WithSecret {
  readonly planner: PlannerRow;
  readonly secret: string | null;
}

type Change = (planner: PlannerRow, manager: EntityManager) => WithSecret | Promise<WithSecret>;

/** The planners a maker hands sheets on to. */
@Injectable()
export class Planners {
  private readonly kept: KeptRecords<PlannerDocument>;

  constructor(
    private readonly work: UnitOfWork,
    private readonly secrets: PlannerSecrets,
    private readonly outbox: Outbox,
  ) {
    const entity = PLANNER as unknown as EntitySchema<RecordRow>;
    const rows = new RecordRepository(entity, (document) => document as PlannerDocument);
    this.kept = new KeptRecords('planner', '/v1/planners', rows, work);
  }

  register(makerId: string, document: PlannerDocument, request: IdempotentRequest): Promise<WithSecret> {
    const now = clock.now().toISOString();
    const bare: PlannerRow = {
      id: newId(),
      makerId,
      version: 1,
      createdAt: now,
      updatedAt: now,
      document,
      state: 'active',
      restingUntil: null,
      secrets: [],
    };
    const made = this.withSecretIfReached(bare);
    const insert = async (manager: EntityManager): Promise<WithSecret> => {
      await manager.insert(PLANNER, made.planner);
      return made;
    };
    return request.once(
      (work) => this.work.write(work),
      makerId,
      insert,
      ({ planner }) => planner.id,
    );
  }

  /** @throws DomainError `not-found` */
  read(makerId: string, id: string): Promise<PlannerRow> {
    return this.work.read((manager) => this.need(manager, makerId, id));
  }

  list(makerId: string, page: PageQuery): Promise<Page<PlannerRow>> {
    return this.kept.list(makerId, page) as Promise<Page<PlannerRow>>;
  }

  /** A secret is made when the planner has its first address. @throws DomainError `not-found`, `if-match-missing`, `changed-since` */
  change(makerId: string, id: string, document: PlannerDocument, ifMatch: string | undefined): Promise<WithSecret> {
    const expected = requireIfMatch(ifMatch);
    return this.update(makerId, id, (planner) => {
      expectVersion(expected, planner.version);
      return this.withSecretIfReached({ ...planner, document });
    });
  }

  /** Erases it, with what was handed to it. @throws DomainError `not-found`, `changed-since` */
  remove(makerId: string, id: string, ifMatch: string | undefined): Promise<void> {
    return this.kept.remove(makerId, id, ifMatch);
  }

  /** A new secret; the old one stays valid for a day. @throws DomainError `not-found`, `planner-without-address` */
  replaceSecret(makerId: string, id: string, request: IdempotentRequest): Promise<WithSecret> {
    const replace = (planner: PlannerRow): WithSecret => {
      if (planner.document.address === null) {
        throw new ApiError('planner-without-address', 'This planner has no address, so nothing is signed for it.');
      }
      const { shown, secrets } = this.secrets.make(id, planner.secrets, new Date());
      return { planner: { ...planner, secrets }, secret: shown };
    };
    const update = (manager: EntityManager) => this.updateWithin(manager, makerId, id, replace);
    return request.once(
      (work) => this.work.erase(work),
      makerId,
      update,
      () => id,
    );
  }

  /** Sends nothing for now; what is handed on waits. @throws DomainError `not-found` */
  pause(makerId: string, id: string): Promise<PlannerRow> {
    return this.enter(makerId, id, 'paused');
  }

  /** Sends what waited, also to a planner that wanted nothing more; each has its day again. @throws DomainError `not-found` */
  resume(makerId: string, id: string): Promise<PlannerRow> {
    return this.enter(makerId, id, 'active');
  }

  /** For use within a unit of work. @throws DomainError `not-found` */
  need(manager: EntityManager, makerId: string, id: string): Promise<PlannerRow> {
    return this.kept.need(manager, makerId, id) as Promise<PlannerRow>;
  }

  private async enter(makerId: string, id: string, state: PlannerState): Promise<PlannerRow> {
    const { planner } = await this.update(makerId, id, async (before, manager) => {
      if (state === 'active') await this.outbox.revive(manager, id, clock.now());
      return { planner: { ...before, state, restingUntil: null }, secret: null };
    });
    return planner;
  }

  private withSecretIfReached(planner: PlannerRow): WithSecret {
    if (planner.document.address === null || planner.secrets.length > 0) return { planner, secret: null };
    const { shown, secrets } = this.secrets.make(planner.id, [], new Date());
    return { planner: { ...planner, secrets }, secret: shown };
  }

  private update(makerId: string, id: string, change: Change): Promise<WithSecret> {
    return this.work.erase((manager) => this.updateWithin(manager, makerId, id, change));
  }

  private async updateWithin(manager: EntityManager, makerId: string, id: string, change: Change): Promise<WithSecret> {
    const before = await this.need(manager, makerId, id);
    const { planner, secret } = await change(before, manager);
    const next = { ...planner, version: before.version + 1, updatedAt: nowButNotBefore(before.updatedAt) };
    const { id: _id, makerId: _maker, createdAt: _made, ...changed } = next;
    const { affected } = await manager.update(PLANNER, { id, makerId, version: before.version }, changed);
    if (affected === 1) return { planner: next, secret };
    throw new ApiError('changed-since', 'It was changed at the same moment. Read it again.');
  }
}
