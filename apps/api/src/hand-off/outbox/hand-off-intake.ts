import { Injectable } from '@nestjs/common';
import { In, type EntityManager } from 'typeorm';
import { DomainError } from '#measure';
import { noSuch } from '../../http/no-such.ts';
import { ApiError } from '../../http/api-error.ts';
import { Conflict } from '../../storage/conflict.ts';
import { UnitOfWork } from '../../storage/unit-of-work.ts';
import type { SheetChoices } from '../../target-sheets/sheet-request.ts';
import { TARGET_SHEET } from '../../target-sheets/target-sheet.entity.ts';
import { TargetSheets, type InputIds } from '../../target-sheets/target-sheets.ts';
import { OutboxWorker } from '../delivery/outbox-worker.ts';
import { PLANNER } from '../planners/planner.entity.ts';
import { Planners } from '../planners/planners.ts';
import { Batcher } from './batcher.ts';
import type { HandOffRow } from './hand-off.entity.ts';
import { newHandOff, sameAsBefore, type RequestIdentity } from './new-hand-off.ts';
import { Outbox } from './outbox.ts';

/** A request to hand a kept sheet on. */
interface HandOffRequest extends RequestIdentity {
  readonly makerId: string;
  readonly targetSheetId: string;
  readonly plannerId: string;
}

const NO_SHEET = noSuch('target sheet', '/v1/target-sheets');
const NO_PLANNER = new ApiError('planner-unknown', 'There is no planner with this id.', '/plannerId');

/** How many requests share one unit of work at most; a unit should not hold others up for long. */
const LARGEST_BATCH = 50;

/** Accepts hand-offs: each is written before it is answered. The same request with the same key is answered as the first was. */
@Injectable()
export class HandOffIntake {
  private readonly batcher = new Batcher<HandOffRequest, HandOffRow>(LARGEST_BATCH, (requests) =>
    retriedOnConflict(() => this.work.write((manager) => this.acceptAll(manager, requests))),
  );

  constructor(
    private readonly work: UnitOfWork,
    private readonly planners: Planners,
    private readonly sheets: TargetSheets,
    private readonly outbox: Outbox,
    private readonly worker: OutboxWorker,
  ) {}

  /** Hands a kept sheet on. @throws DomainError `not-found`, `planner-unknown`, `idempotency-key-reused`, and of `newHandOff` */
  async send(request: HandOffRequest): Promise<HandOffRow> {
    const row = await this.batcher.submit(request);
    this.worker.wake();
    return row;
  }

  /** Makes a sheet, keeps it and hands it on: all of it is written, or nothing. @throws DomainError as `send`, and of the sheet */
  async makeAndSend(
    request: Omit<HandOffRequest, 'targetSheetId'>,
    ids: InputIds,
    choices: SheetChoices,
  ): Promise<HandOffRow> {
    const { makerId, plannerId } = request;
    const row = await retriedOnConflict(() =>
      this.work.write(async (manager) => {
        const [first] = await this.outbox.findByKeys(manager, [request]);
        if (first) return sameAsBefore(first, request);
        const planner = await this.planners.need(manager, makerId, plannerId);
        const made = newHandOff(await this.sheets.keepWithin(manager, makerId, ids, choices), planner, request);
        await this.outbox.insert(manager, [made]);
        return made;
      }),
    );
    this.worker.wake();
    return row;
  }

  /** Each for itself: what is wrong with one does not touch the others. */
  private async acceptAll(
    manager: EntityManager,
    requests: readonly HandOffRequest[],
  ): Promise<(HandOffRow | Error)[]> {
    const planners = byId(await manager.findBy(PLANNER, { id: In(requests.map(({ plannerId }) => plannerId)) }));
    const sheetIds = In(requests.map(({ targetSheetId }) => targetSheetId));
    const select = ['id', 'makerId', 'sheet'] as const;
    const sheets = byId(await manager.find(TARGET_SHEET, { select: [...select], where: { id: sheetIds } }));
    const known = new Map((await this.outbox.findByKeys(manager, requests)).map((row) => [keyOf(row), row]));
    const made: HandOffRow[] = [];
    const answers = requests.map((request) => {
      try {
        const first = known.get(keyOf(request));
        if (first) return sameAsBefore(first, request);
        const sheet = ownRow(sheets, request.targetSheetId, request.makerId, NO_SHEET);
        const planner = ownRow(planners, request.plannerId, request.makerId, NO_PLANNER);
        const row = newHandOff(sheet, planner, request);
        if (request.idempotencyKey !== null) known.set(keyOf(request), row);
        made.push(row);
        return row;
      } catch (error) {
        if (error instanceof DomainError) return error;
        throw error;
      }
    });
    await this.outbox.insert(manager, made);
    return answers;
  }
}

const byId = <R extends { id: string }>(rows: readonly R[]): ReadonlyMap<string, R> =>
  new Map(rows.map((row) => [row.id, row]));

const keyOf = ({ makerId, idempotencyKey }: Pick<HandOffRow, 'makerId' | 'idempotencyKey'>): string =>
  JSON.stringify([makerId, idempotencyKey]);

/** What this maker means. @throws DomainError with `refusal` where it is not there, or another's */
function ownRow<R extends { makerId: string }>(
  rows: ReadonlyMap<string, R>,
  id: string,
  makerId: string,
  refusal: DomainError,
): R {
  const row = rows.get(id);
  if (row?.makerId === makerId) return row;
  throw refusal;
}

/** Once more where another unit of work came between: now what it wrote can be seen. */
async function retriedOnConflict<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof Conflict)) throw error;
    return work();
  }
}
