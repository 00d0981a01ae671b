import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { noSuch } from '../../http/no-such.ts';
import { ApiError } from '../../http/api-error.ts';
import { pageOf, rowsOf, type Page, type PageQuery } from '../../http/page.ts';
import { newId } from '../../storage/new-id.ts';
import { forgetMade, type IdempotentRequest } from '../../idempotency/idempotent-request.ts';
import { inPage } from '../../storage/in-page.ts';
import { UnitOfWork } from '../../storage/unit-of-work.ts';
import { TargetSheetRepository } from '../../target-sheets/target-sheet.repository.ts';
import { hashOf, newKeyText, shownOf } from './key-text.ts';
import { READ_KEY, type ReadKeyRow } from './read-key.entity.ts';

/** What a key is made for. */
type KeyPurpose = Pick<ReadKeyRow, 'title' | 'targetSheetId' | 'expiresAt'>;

/** A new key: its text is shown this once. */
export interface MadeKey {
  readonly row: ReadKeyRow;
  readonly key: string;
}

/** When a key was last used is written down no finer than this, so that reading does not become writing. */
const USE_NOTED_MS = 60_000;

/** The keys by which planners read a maker's sheets. */
@Injectable()
export class ReadKeys {
  constructor(
    private readonly work: UnitOfWork,
    private readonly sheets: TargetSheetRepository,
  ) {}

  /** @throws DomainError `sheet-unknown`, `expiry-past` */
  async make(
    makerId: string,
    { title, targetSheetId, expiresAt }: KeyPurpose,
    request: IdempotentRequest,
  ): Promise<MadeKey> {
    const now = new Date().toISOString();
    if (expiresAt !== null && expiresAt <= now) {
      throw new ApiError('expiry-past', 'This time is past; the key would open nothing.', '/expiresAt');
    }
    const key = newKeyText();
    const row: ReadKeyRow = {
      id: newId(),
      makerId,
      targetSheetId,
      createdAt: now,
      title,
      prefix: shownOf(key),
      hash: hashOf(key),
      expiresAt,
      revokedAt: null,
      lastUsedAt: null,
    };
    const insert = async (manager: EntityManager): Promise<MadeKey> => {
      if (targetSheetId !== null && (await this.sheets.find(manager, makerId, targetSheetId)) === null) {
        throw new ApiError('sheet-unknown', 'There is no target sheet with this id.', '/targetSheetId');
      }
      await manager.insert(READ_KEY, row);
      return { row, key };
    };
    return request.once(
      (work) => this.work.write(work),
      makerId,
      insert,
      ({ row: { id } }) => id,
    );
  }

  /** @throws DomainError `not-found` */
  read(makerId: string, id: string): Promise<ReadKeyRow> {
    return this.work.read((manager) => this.need(manager, makerId, id));
  }

  async list(makerId: string, page: PageQuery): Promise<Page<ReadKeyRow>> {
    const asked = rowsOf(page);
    const where = { makerId, ...inPage<ReadKeyRow>(asked, 'createdAt') };
    const rows = await this.work.read((manager) =>
      manager.find(READ_KEY, { where, order: { id: 'DESC' }, take: asked.limit + 1 }),
    );
    return pageOf(rows, asked.limit);
  }

  /** It opens nothing from now on. Revoking twice keeps the first time. @throws DomainError `not-found` */
  revoke(makerId: string, id: string): Promise<ReadKeyRow> {
    return this.work.write(async (manager) => {
      const row = await this.need(manager, makerId, id);
      if (row.revokedAt !== null) return row;
      const revokedAt = new Date().toISOString();
      await manager.update(READ_KEY, { id }, { revokedAt });
      return { ...row, revokedAt };
    });
  }

  /** @throws DomainError `not-found` */
  async remove(makerId: string, id: string): Promise<void> {
    await this.work.erase(async (manager) => {
      await this.need(manager, makerId, id);
      await manager.delete(READ_KEY, { makerId, id });
      await forgetMade(manager, makerId, id);
    });
  }

  /** The key that this text is, where it opens anything now; null where it does not. Notes its use. */
  async open(text: string): Promise<ReadKeyRow | null> {
    const now = new Date();
    const row = await this.work.read((manager) => manager.findOneBy(READ_KEY, { hash: hashOf(text) }));
    if (row === null || row.revokedAt !== null) return null;
    if (row.expiresAt !== null && row.expiresAt <= now.toISOString()) return null;
    const noted = row.lastUsedAt === null ? -Infinity : Date.parse(row.lastUsedAt);
    if (now.getTime() - noted >= USE_NOTED_MS) {
      await this.work.write((manager) => manager.update(READ_KEY, { id: row.id }, { lastUsedAt: now.toISOString() }));
    }
    return row;
  }

  private async need(manager: EntityManager, makerId: string, id: string): Promise<ReadKeyRow> {
    const row = await manager.findOneBy(READ_KEY, { makerId, id });
    if (row !== null) return row;
    throw noSuch('read key', '/v1/read-keys');
  }
}
