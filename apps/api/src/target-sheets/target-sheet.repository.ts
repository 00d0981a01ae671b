import { Injectable } from '@nestjs/common';
import { type EntityManager } from 'typeorm';
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
  'garmentId',
  'garmentVersion',
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

  find(manager: EntityManager, makerId: string, id: string): Promise<TargetSheetRow | null> {
    return manager.findOneBy(TARGET_SHEET, { makerId, id });
  }

  /** The newest first, one more than asked for. */
  page(manager: EntityManager, makerId: string, rows: PageRows): Promise<SheetEntry[]> {
    return manager.find(TARGET_SHEET, {
      select: [...ENTRY],
      where: { makerId, ...inPage<TargetSheetRow>(rows, 'createdAt') },
      order: { id: 'DESC' },
      take: rows.limit + 1,
    });
  }

  all(manager: EntityManager, makerId: string): Promise<TargetSheetRow[]> {
    return manager.find(TARGET_SHEET, { where: { makerId }, order: { id: 'ASC' } });
  }

  async delete(manager: EntityManager, makerId: string, id: string): Promise<boolean> {
    return (await manager.delete(TARGET_SHEET, { makerId, id })).affected === 1;
  }
}
