import { Injectable } from '@nestjs/common';
import type { EntityManager, EntitySchema } from 'typeorm';
import { ATTEMPT } from '../hand-off/outbox/attempt.entity.ts';
import { HAND_OFF } from '../hand-off/outbox/hand-off.entity.ts';
import { PLANNER } from '../hand-off/planners/planner.entity.ts';
import { READ_KEY } from '../hand-off/read-keys/read-key.entity.ts';
import { HttpProblem } from '../http/problem.ts';
import type { IdempotentRequest } from '../idempotency/idempotent-request.ts';
import { BODY, FABRIC, GARMENT } from '../records/record.entity.ts';
import { continueIdsAfter } from '../storage/new-id.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';
import { TARGET_SHEET } from '../target-sheets/target-sheet.entity.ts';
import { isNothingKept } from './everything.ts';
import type { ImportedDto } from './export.dto.ts';
import { readExport, type ExportRows } from './read-export.ts';

type Row = { id: string };

/** In an order in which every row comes after what it refers to. */
const TABLES: readonly (readonly [keyof ExportRows, EntitySchema])[] = [
  ['bodies', BODY],
  ['garments', GARMENT],
  ['fabrics', FABRIC],
  ['targetSheets', TARGET_SHEET],
  ['planners', PLANNER],
  ['handOffs', HAND_OFF],
  ['attempts', ATTEMPT],
  ['readKeys', READ_KEY],
] as (readonly [keyof ExportRows, EntitySchema])[];

/** Rows that are written together. */
const BATCH = 200;

/** Reads in what `Everything.export` gave. */
@Injectable()
export class ExportImport {
  constructor(private readonly work: UnitOfWork) {}

  /** @throws HttpProblem 409 where something is kept already, 422 with every field that cannot be used */
  import(makerId: string, json: unknown, request: IdempotentRequest): Promise<ImportedDto> {
    const rows = readExport(makerId, json);
    const insert = async (manager: EntityManager): Promise<ImportedDto> => {
      if (!(await isNothingKept(manager, makerId))) {
        const words =
          'Something is kept here already. Erase it first (DELETE /v1/everything), or read this in elsewhere.';
        throw new HttpProblem(409, 'not-empty', words);
      }
      for (const [name, entity] of TABLES) {
        const list = rows[name] as readonly Row[];
        for (let from = 0; from < list.length; from += BATCH) {
          await manager.insert(entity, list.slice(from, from + BATCH));
        }
        for (const { id } of list) continueIdsAfter(id);
      }
      return { imported: Object.fromEntries(TABLES.map(([name]) => [name, rows[name].length])), notes: notesOf(rows) };
    };
    return request.once(
      (work) => this.work.write(work),
      makerId,
      insert,
      () => makerId,
    );
  }
}

function notesOf({ planners, readKeys }: ExportRows): string[] {
  return [
    ...(planners.some(({ secrets }) => secrets.length > 0)
      ? ['Signing secrets are in no export: make each planner a new one.']
      : []),
    ...(readKeys.length > 0 ? ['Keys are in no export: those read in open nothing; make new ones.'] : []),
  ];
}
