import { Injectable } from '@nestjs/common';
import { GROWTH_RECORD, type StoredFabric } from '#fabric';
import { garmentFromRecord } from '#garment';
import { growthLearned, type GrowthInDirection, type TargetSheet } from '#target-sheet';
import { Fabrics } from '../fabrics/fabrics.ts';
import { Garments } from '../garments/garments.ts';
import type { RecordRow } from '../records/record.entity.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';
import { NOT_OFFERED, type LearnedDto } from './learned.dto.ts';
import { TargetSheetRepository } from './target-sheet.repository.ts';

/** What kept garments tell of the yarns that they were made of. */
@Injectable()
export class Learned {
  constructor(
    private readonly work: UnitOfWork,
    private readonly garments: Garments,
    private readonly sheets: TargetSheetRepository,
    private readonly fabrics: Fabrics,
  ) {}

  /** @throws DomainError `not-found` */
  of(makerId: string, garmentId: string): Promise<LearnedDto> {
    return this.work.snapshot(async (manager) => {
      const { document } = await this.garments.need(manager, makerId, garmentId);
      const { madeFrom } = document;
      const nothing = { garmentId, targetSheetId: madeFrom, across: null, along: null, fabric: null };
      if (madeFrom === null) return notOffered(nothing, 'not-linked');
      const row = await this.sheets.find(manager, makerId, madeFrom);
      if (row === null) return notOffered(nothing, 'sheet-gone');
      const learned = growthLearned(JSON.parse(row.sheet) as TargetSheet, garmentFromRecord(document));
      const kept = row.fabricId === null ? null : await this.fabrics.rows.find(manager, makerId, row.fabricId);
      const found = { ...nothing, ...learned, fabric: kept && fabricOf(kept) };
      const { across, along, fabric } = found;
      if (across === null && along === null) return notOffered(found, 'nothing-comparable');
      if (fabric === null) return notOffered(found, row.fabricId === null ? 'sheet-read-in' : 'fabric-gone');
      if (!isLikely('across', across) || !isLikely('along', along)) return notOffered(found, 'growth-unlikely');
      const offered = {
        across: across?.growth ?? fabric.growth?.across ?? 0,
        along: along?.growth ?? fabric.growth?.along ?? 0,
      };
      return { ...found, offered, notOffered: null };
    });
  }
}

const notOffered = (found: Omit<LearnedDto, 'offered' | 'notOffered'>, code: keyof typeof NOT_OFFERED): LearnedDto => ({
  ...found,
  offered: null,
  notOffered: { code, text: NOT_OFFERED[code] },
});

const fabricOf = ({ id, version, document: { growth } }: RecordRow<StoredFabric>) => ({ id, version, growth });

/** What a fabric record takes. */
function isLikely(axis: 'across' | 'along', learned: GrowthInDirection | null): boolean {
  const { min, max } = GROWTH_RECORD[axis];
  return learned === null || (learned.growth >= min && learned.growth <= max);
}
