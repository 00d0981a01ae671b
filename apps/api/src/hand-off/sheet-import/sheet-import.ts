import { isDeepStrictEqual } from 'node:util';
import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { readSheet, type TargetSheet } from '#target-sheet';
import { ApiError } from '../../http/api-error.ts';
import { ID_PATTERN } from '../../http/id.ts';
import type { IdempotentRequest } from '../../idempotency/idempotent-request.ts';
import { UnitOfWork } from '../../storage/unit-of-work.ts';
import { summaryOf, type TargetSheetRow } from '../../target-sheets/target-sheet.entity.ts';
import { TargetSheetRepository } from '../../target-sheets/target-sheet.repository.ts';

const LONGEST_VERSION = 40;

/** A sheet read in, and whether it was kept here before. */
interface ReadIn {
  readonly row: TargetSheetRow;
  readonly known: boolean;
}

/** Reads sheets in that were kept or handed on before, here or elsewhere. */
@Injectable()
export class SheetImport {
  constructor(
    private readonly work: UnitOfWork,
    private readonly sheets: TargetSheetRepository,
  ) {}

  /**
   * Keeps a sheet as it is, with its id; what it was made from is not known here. The same sheet is kept once.
   *
   * @throws DomainError of `readSheet`; `sheet-id-unusable`, `sheet-time-unusable`, `sheet-rules-unusable`; `sheet-differs`
   */
  readIn(makerId: string, json: unknown, request: IdempotentRequest): Promise<ReadIn> {
    const row = importedSheetRow(makerId, readSheet(json));
    const keep = async (manager: EntityManager): Promise<ReadIn> => {
      const kept = await this.sheets.find(manager, makerId, row.id);
      if (kept === null) {
        await this.sheets.insert(manager, row);
        return { row, known: false };
      }
      if (isDeepStrictEqual(JSON.parse(kept.sheet), json)) return { row: kept, known: true };
      throw new ApiError('sheet-differs', 'Another sheet with this id is kept; a kept sheet never changes.');
    };
    return request.once(
      (work) => this.work.write(work),
      makerId,
      keep,
      ({ row: { id } }) => id,
    );
  }
}

/** The row of a sheet that comes back. @throws DomainError as `SheetImport` */
export function importedSheetRow(makerId: string, sheet: TargetSheet): TargetSheetRow {
  const { id, createdAt, rulesVersion } = sheet;
  if (!ID_PATTERN.test(id)) throw new ApiError('sheet-id-unusable', 'The id must be a UUID in lower case.', '/id');
  if (Number.isNaN(Date.parse(createdAt))) {
    throw new ApiError('sheet-time-unusable', 'There is no such day or time.', '/createdAt');
  }
  if (rulesVersion.length > LONGEST_VERSION) {
    const words = `The version of the rules has at most ${LONGEST_VERSION} characters.`;
    throw new ApiError('sheet-rules-unusable', words, '/rulesVersion');
  }
  return {
    id,
    makerId,
    createdAt: new Date(createdAt).toISOString(),
    rulesVersion,
    bodyId: null,
    bodyVersion: null,
    garments: [],
    fabricId: null,
    fabricVersion: null,
    summary: summaryOf(sheet),
    request: null,
    sheet: JSON.stringify(sheet),
  };
}
