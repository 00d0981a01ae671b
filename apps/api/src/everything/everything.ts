import { Injectable } from '@nestjs/common';
import { Bodies } from '../bodies/bodies.ts';
import { Fabrics } from '../fabrics/fabrics.ts';
import { Garments } from '../garments/garments.ts';
import { keptDocument } from '../records/answer.ts';
import { ENTITIES } from '../storage/entities.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';
import { TargetSheetRepository } from '../target-sheets/target-sheet.repository.ts';
import type { ExportDto } from './export.dto.ts';

/** All that is kept of a maker: to take along, or to erase. */
@Injectable()
export class Everything {
  constructor(
    private readonly work: UnitOfWork,
    private readonly bodies: Bodies,
    private readonly garments: Garments,
    private readonly fabrics: Fabrics,
    private readonly sheets: TargetSheetRepository,
  ) {}

  /** As it stands at one moment, oldest first. */
  export(makerId: string): Promise<ExportDto> {
    return this.work.read(async (manager) => ({
      format: 'easewright/export',
      version: '1.0',
      exportedAt: new Date().toISOString(),
      bodies: (await this.bodies.rows.all(manager, makerId)).map(keptDocument),
      garments: (await this.garments.rows.all(manager, makerId)).map(keptDocument),
      fabrics: (await this.fabrics.rows.all(manager, makerId)).map(keptDocument),
      targetSheets: (await this.sheets.all(manager, makerId)).map(({ request, sheet }) => ({
        request,
        sheet: JSON.parse(sheet) as object,
      })),
    }));
  }

  /** Every row of every table that is hers; the maker herself stays. */
  async erase(makerId: string): Promise<void> {
    await this.work.erase(async (manager) => {
      for (const entity of [...ENTITIES].reverse()) {
        if ('makerId' in entity.options.columns) await manager.delete(entity, { makerId });
      }
    });
  }
}
