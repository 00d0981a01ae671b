import { Injectable } from '@nestjs/common';
import { type EntityManager } from 'typeorm';
import { storedSheetRequest } from './sheet-request.ts';
import { TARGET_SHEET, type TargetSheetRow } from './target-sheet.entity.ts';
import { inPage, type PageRows } from '../storage/in-page.ts';

/** A row without the sheet itself, for lists. */
export type SheetEntry = Omit<TargetSheetRow, 'sheet'>;

const ENTRY = [
  'id',
  'makerId',
  'createdAt',
  'rulesVersion',
  'bodyId',
  'bodyVersion',
  'garments',
  'fabricId',
  'fabricVersion',
  'summary',
  'request',
] as const satisfies readonly (keyof SheetEntry)[];

/** The kept sheets. Every method is bound to a maker, and to the unit of work whose manager it is given. */
@Injectable()
export class TargetSheetRepository {
  async insert(manager: EntityManager, row: TargetSheetRow): Promise<void> {
    await manager.insert(TARGET_SHEET, row);
  }

  async find(manager: EntityManager, makerId: string, id: string): Promise<TargetSheetRow | null> {
    const row = await manager.findOneBy(TARGET_SHEET, { makerId, id });
    return row && read(row);
  }

  /** The newest first, one more than asked for. */
  async page(manager: EntityManager, makerId: string, rows: PageRows): Promise<SheetEntry[]> {
    const found = await manager.find(TARGET_SHEET, {
      select: [...ENTRY],
      where: { makerId, ...inPage<TargetSheetRow>(rows, 'createdAt') },
      order: { id: 'DESC' },
      take: rows.limit + 1,
    });
    return found.map(read);
  }

  async all(manager: EntityManager, makerId: string): Promise<TargetSheetRow[]> {
    const found = await manager.find(TARGET_SHEET, { where: { makerId }, order: { id: 'ASC' } });
    return found.map(read);
  }

  async delete(manager: EntityManager, makerId: string, id: string): Promise<boolean> {
    return (await manager.delete(TARGET_SHEET, { makerId, id })).affected === 1;
  }
}

/** What was kept before a field was added to a kind of record reads as if the field had been left out. */
const read = <R extends SheetEntry>(row: R): R => ({ ...row, request: row.request && storedSheetRequest(row.request) });
