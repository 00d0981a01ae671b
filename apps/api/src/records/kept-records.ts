import type { EntityManager } from 'typeorm';
import { expectVersion, requireIfMatch } from '../http/if-match.ts';
import { noSuch } from '../http/no-such.ts';
import { pageOf, rowsOf, type Page, type PageQuery } from '../http/page.ts';
import { clock, nowButNotBefore } from '../clock/steady-clock.ts';
import { newId } from '../storage/new-id.ts';
import { forgetMade, type IdempotentRequest } from '../idempotency/idempotent-request.ts';
import type { UnitOfWork } from '../storage/unit-of-work.ts';
import type { RecordRow } from './record.entity.ts';
import type { RecordRepository } from './record.repository.ts';

/** A maker's records of one kind: made, read, changed by whole documents, erased. */
export class KeptRecords<D extends object> {
  constructor(
    readonly what: string,
    private readonly address: string,
    readonly rows: RecordRepository<D>,
    private readonly work: UnitOfWork,
  ) {}

  create(makerId: string, document: D, request: IdempotentRequest): Promise<RecordRow<D>> {
    const now = clock.now().toISOString();
    const row = { id: newId(), makerId, version: 1, createdAt: now, updatedAt: now, document };
    const insert = async (manager: EntityManager): Promise<RecordRow<D>> => {
      await this.rows.insert(manager, row);
      return row;
    };
    return request.once(
      (work) => this.work.write(work),
      makerId,
      insert,
      ({ id }) => id,
    );
  }

  /** @throws DomainError `not-found` */
  read(makerId: string, id: string): Promise<RecordRow<D>> {
    return this.work.read((manager) => this.need(manager, makerId, id));
  }

  async list(makerId: string, page: PageQuery): Promise<Page<RecordRow<D>>> {
    const rows = rowsOf(page);
    return pageOf(await this.work.read((manager) => this.rows.page(manager, makerId, rows)), rows.limit);
  }

  /** @throws DomainError `not-found`, `if-match-missing`, `changed-since` */
  async replace(makerId: string, id: string, document: D, ifMatch: string | undefined): Promise<RecordRow<D>> {
    const expected = requireIfMatch(ifMatch);
    return this.work.erase(async (manager) => {
      const old = await this.hold(manager, makerId, id);
      expectVersion(expected, old.version);
      const next = { ...old, version: old.version + 1, updatedAt: nowButNotBefore(old.updatedAt), document };
      await this.rows.replace(manager, next);
      return next;
    });
  }

  /** Erases it. If-Match is heeded where it is sent. @throws DomainError `not-found`, `changed-since` */
  async remove(makerId: string, id: string, ifMatch: string | undefined): Promise<void> {
    await this.work.erase(async (manager) => {
      const old = await this.hold(manager, makerId, id);
      if (ifMatch !== undefined) expectVersion(ifMatch, old.version);
      await this.rows.delete(manager, makerId, id);
      await forgetMade(manager, makerId, id);
    });
  }

  /** For use within a unit of work. @throws DomainError `not-found` */
  async need(manager: EntityManager, makerId: string, id: string): Promise<RecordRow<D>> {
    return this.found(await this.rows.find(manager, makerId, id));
  }

  /** As `need`, and nobody else changes it until this unit of work ends. @throws DomainError `not-found` */
  async hold(manager: EntityManager, makerId: string, id: string): Promise<RecordRow<D>> {
    return this.found(await this.rows.hold(manager, makerId, id));
  }

  private found(row: RecordRow<D> | null): RecordRow<D> {
    if (row !== null) return row;
    throw noSuch(this.what, this.address);
  }
}
