import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { DomainError } from '#measure';
import type { TargetSheet } from '#target-sheet';
import { ApiError } from '../http/api-error.ts';
import { Bodies } from '../bodies/bodies.ts';
import { Fabrics } from '../fabrics/fabrics.ts';
import { Garments } from '../garments/garments.ts';
import { noSuch } from '../http/no-such.ts';
import { pageOf, rowsOf, type Page, type PageQuery } from '../http/page.ts';
import { forgetMade, type IdempotentRequest } from '../idempotency/idempotent-request.ts';
import type { KeptRecords } from '../records/kept-records.ts';
import type { RecordRow } from '../records/record.entity.ts';
import { newId } from '../storage/new-id.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';
import { currentVersions, inputsChanged, type Changeable, type CurrentVersions } from './inputs-changed.ts';
import { SheetComposer } from './sheet-composer.ts';
import { storedSheetRequest, type SheetChoices } from './sheet-request.ts';
import { summaryOf, type TargetSheetRow } from './target-sheet.entity.ts';
import { TargetSheetRepository, type SheetEntry } from './target-sheet.repository.ts';

/** The kept records that a sheet is to be made from. */
export interface InputIds {
  readonly body: string | null;
  /** `pointer`: where its id stands in the request. */
  readonly garments: readonly { readonly id: string; readonly basis: boolean; readonly pointer: string }[];
  readonly fabric: string;
}

/** A kept sheet or its entry, with what is known of its inputs now. */
export interface WithChanges<T> {
  readonly row: T;
  readonly changed: readonly Changeable[];
  readonly current: CurrentVersions;
}

/** The sheets a maker keeps. */
@Injectable()
export class TargetSheets {
  constructor(
    private readonly work: UnitOfWork,
    private readonly rows: TargetSheetRepository,
    private readonly bodies: Bodies,
    private readonly garments: Garments,
    private readonly fabrics: Fabrics,
    private readonly composer: SheetComposer,
  ) {}

  /** Makes a sheet from kept records and keeps it, all in one unit of work. @throws DomainError */
  keep(makerId: string, ids: InputIds, choices: SheetChoices, request: IdempotentRequest): Promise<TargetSheetRow> {
    const keep = (manager: EntityManager) => this.keepWithin(manager, makerId, ids, choices);
    return request.once(
      (work) => this.work.write(work),
      makerId,
      keep,
      ({ id }) => id,
    );
  }

  /** The same within a unit of work that writes more than the sheet. */
  async keepWithin(
    manager: EntityManager,
    makerId: string,
    ids: InputIds,
    choices: SheetChoices,
  ): Promise<TargetSheetRow> {
    const body = ids.body === null ? null : await input(this.bodies, manager, makerId, ids.body, '/bodyId');
    const garments = [];
    for (const { id, basis, pointer } of ids.garments)
      garments.push({ basis, row: await input(this.garments, manager, makerId, id, pointer) });
    const fabric = await input(this.fabrics, manager, makerId, ids.fabric, '/fabricId');
    const request = {
      ...choices,
      body: body && body.document,
      garments: garments.map(({ basis, row }) => ({ ...row.document, basis })),
      fabric: fabric.document,
    };
    const sheet = namingIds(ids, () => this.composer.compose(request, newId()));
    const row: TargetSheetRow = {
      id: sheet.id,
      makerId,
      createdAt: sheet.createdAt,
      rulesVersion: sheet.rulesVersion,
      bodyId: ids.body,
      bodyVersion: body && body.version,
      garments: garments.map(({ row: { id, version } }) => ({ id, version })),
      fabricId: ids.fabric,
      fabricVersion: fabric.version,
      summary: summaryOf(sheet),
      request: storedSheetRequest(request),
      sheet: JSON.stringify(sheet),
    };
    await this.rows.insert(manager, row);
    return row;
  }

  /** @throws DomainError `not-found` */
  read(makerId: string, id: string): Promise<TargetSheetRow> {
    return this.work.read((manager) => this.need(manager, makerId, id));
  }

  /** @throws DomainError `not-found` */
  readWithChanges(makerId: string, id: string): Promise<WithChanges<TargetSheetRow>> {
    return this.work.read(async (manager) => {
      const row = await this.need(manager, makerId, id);
      const current = await currentVersions(manager, makerId, [row]);
      return { row, changed: inputsChanged(row, current), current };
    });
  }

  list(makerId: string, page: PageQuery): Promise<Page<WithChanges<SheetEntry> & { id: string }>> {
    const rows = rowsOf(page);
    return this.work.read(async (manager) => {
      const { items, next } = pageOf(await this.rows.page(manager, makerId, rows), rows.limit);
      const current = await currentVersions(manager, makerId, items);
      return { items: items.map((row) => ({ id: row.id, row, changed: inputsChanged(row, current), current })), next };
    });
  }

  /** @throws DomainError `not-found` */
  async remove(makerId: string, id: string): Promise<void> {
    const erased = await this.work.erase(async (manager) => {
      await forgetMade(manager, makerId, id);
      return this.rows.delete(manager, makerId, id);
    });
    if (!erased) throw noSuchSheet();
  }

  private async need(manager: EntityManager, makerId: string, id: string): Promise<TargetSheetRow> {
    const row = await this.rows.find(manager, makerId, id);
    if (row === null) throw noSuchSheet();
    return row;
  }
}

function noSuchSheet(): DomainError {
  return noSuch('target sheet', '/v1/target-sheets');
}

/** An id in a request that names nothing is a wrong field, not a wrong address. */
async function input<D extends object>(
  records: KeptRecords<D>,
  manager: EntityManager,
  makerId: string,
  id: string,
  pointer: string,
): Promise<RecordRow<D>> {
  const row = await records.rows.find(manager, makerId, id);
  if (row !== null) return row;
  throw new ApiError('input-unknown', `There is no ${records.what} with this id.`, pointer);
}

/** What cannot be used of a kept record cannot be used by its id; a garment that is missing for the basis, too. */
function namingIds({ garments }: InputIds, compose: () => TargetSheet): TargetSheet {
  try {
    return compose();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const [, kind, place] = /^\/(body|fabric|garments)(?:\/(\d+))?/.exec(error.pointer) ?? [];
    if (kind === 'garments') throw error.at(garments[Number(place)]!.pointer);
    if (kind !== undefined) throw error.at(`/${kind}Id`);
    throw error.code === 'garment-missing' && error.pointer === '/design/basis' ? error.at('/garmentId') : error;
  }
}
