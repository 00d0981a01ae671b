import { Injectable } from '@nestjs/common';
import type { EntityManager, EntitySchema } from 'typeorm';
import { DailyCopies } from '../backup/daily-copies.ts';
import { Bodies } from '../bodies/bodies.ts';
import { Fabrics } from '../fabrics/fabrics.ts';
import { Garments } from '../garments/garments.ts';
import { keptPlanner } from '../hand-off/planners/kept-planner.dto.ts';
import { PLANNER } from '../hand-off/planners/planner.entity.ts';
import { keptReadKey } from '../hand-off/read-keys/read-key.dto.ts';
import { exportedHandOff } from './read-exported-hand-offs.ts';
import { ATTEMPT, type AttemptRow } from '../hand-off/outbox/attempt.entity.ts';
import { HAND_OFF } from '../hand-off/outbox/hand-off.entity.ts';
import { READ_KEY } from '../hand-off/read-keys/read-key.entity.ts';
import { keptDocument } from '../records/answer.ts';
import { ENTITIES } from '../storage/entities.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';
import { TargetSheetRepository } from '../target-sheets/target-sheet.repository.ts';
import type { TargetSheetRow } from '../target-sheets/target-sheet.entity.ts';
import type { ExportDto } from './export.dto.ts';

/** What belongs to a maker. */
const HERS = ENTITIES.filter((entity) => 'makerId' in entity.options.columns) as EntitySchema<{ makerId: string }>[];

const inputsOf = (row: Omit<TargetSheetRow, 'request' | 'sheet'>) => {
  const { bodyId, bodyVersion, garments, fabricId, fabricVersion } = row;
  return { bodyId, bodyVersion, garments, fabricId, fabricVersion };
};

async function exportedHandOffs(manager: EntityManager, makerId: string): Promise<object[]> {
  const hers = { where: { makerId }, order: { id: 'ASC' } } as const;
  const attempts = new Map<string, AttemptRow[]>();
  for (const attempt of await manager.find(ATTEMPT, hers)) {
    attempts.set(attempt.handOffId, [...(attempts.get(attempt.handOffId) ?? []), attempt]);
  }
  return (await manager.find(HAND_OFF, hers)).map((row) => exportedHandOff(row, attempts.get(row.id) ?? []));
}

export async function isNothingKept(manager: EntityManager, makerId: string): Promise<boolean> {
  for (const entity of HERS) if (await manager.existsBy(entity, { makerId })) return false;
  return true;
}

/** All that is kept of a maker: to take along, or to erase. */
@Injectable()
export class Everything {
  constructor(
    private readonly work: UnitOfWork,
    private readonly bodies: Bodies,
    private readonly garments: Garments,
    private readonly fabrics: Fabrics,
    private readonly sheets: TargetSheetRepository,
    private readonly copies: DailyCopies,
  ) {}

  /** As it stands at one moment, oldest first. Never what opens or signs: no planner's secret, no key. */
  export(makerId: string): Promise<ExportDto> {
    const hers = { where: { makerId }, order: { id: 'ASC' } } as const;
    return this.work.snapshot(async (manager) => ({
      format: 'easewright/export',
      version: '3.0',
      bodies: (await this.bodies.rows.all(manager, makerId)).map(keptDocument),
      garments: (await this.garments.rows.all(manager, makerId)).map(keptDocument),
      fabrics: (await this.fabrics.rows.all(manager, makerId)).map(keptDocument),
      targetSheets: (await this.sheets.all(manager, makerId)).map(({ request, sheet, ...row }) => ({
        request,
        sheet: JSON.parse(sheet) as object,
        inputs: inputsOf(row),
      })),
      planners: (await manager.find(PLANNER, hers)).map(keptPlanner),
      readKeys: (await manager.find(READ_KEY, hers)).map(keptReadKey),
      handOffs: await exportedHandOffs(manager, makerId),
    }));
  }

  /** True while she has kept nothing. */
  isNothing(makerId: string): Promise<boolean> {
    return this.work.read((manager) => isNothingKept(manager, makerId));
  }

  /** Every row of every table that is hers, and before that the daily copies; the maker herself stays. */
  async erase(makerId: string): Promise<void> {
    await this.copies.removeAll();
    await this.work.erase(async (manager) => {
      for (const entity of [...HERS].reverse()) await manager.delete(entity, { makerId });
    });
  }
}
