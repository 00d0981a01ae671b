import type { EntityManager } from 'typeorm';
import { ApiError } from '../http/api-error.ts';
import { expectVersion, isAnyVersion, requireIfMatch } from '../http/if-match.ts';
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
    for (;;) {
      const next = await this.replaceUnlessChanged(makerId, id, document, expected);
      if (next !== null) return next;
      // Another was faster, so one of them went on.
      if (!isAnyVersion(expected))
        throw new ApiError('changed-since', 'It was changed at the same moment. Read it again.');
    }
  }

  /** Null where it was changed at the same moment. */
  private replaceUnlessChanged(
    makerId: string,
    id: string,
    document: D,
    expected: string,
  ): Promise<RecordRow<D> | null> {
    return this.work.erase(async (manager) => {
      const old = await this.need(manager, makerId, id);
      expectVersion(expected, old.version);
      const next = { ...old, version: old.version + 1, updatedAt: nowButNotBefore(old.updatedAt), document };
      return (await this.rows.replace(manager, next)) ? next : null;
    });
  }

  /** Erases it. If-Match is heeded where it is sent. @throws DomainError `not-found`, `changed-since` */
  async remove(makerId: string, id: string, ifMatch: string | undefined): Promise<void> {
    await this.work.erase(async (manager) => {
      const old = await this.need(manager, makerId, id);
      if (ifMatch !== undefined) expectVersion(ifMatch, old.version);
      await this.rows.delete(manager, makerId, id);
      await forgetMade(manager, makerId, id);
    });
  }

  /** For use within a unit of work. @throws DomainError `not-found` */
  async need(manager: EntityManager, makerId: string, id: string): Promise<RecordRow<D>> {
    const row = await this.rows.find(manager, makerId, id);
    if (row !== null) return row;
    throw noSuch(this.what, this.address);
  }
}
