import { Injectable } from '@nestjs/common';
import { In, type EntityManager } from 'typeorm';
import { DomainError } from '#measure';
import { Conflict } from '../../storage/conflict.ts';
import { UnitOfWork } from '../../storage/unit-of-work.ts';
import type { SheetChoices } from '../../target-sheets/sheet-request.ts';
import { TARGET_SHEET } from '../../target-sheets/target-sheet.entity.ts';
import { TargetSheets, type InputIds } from '../../target-sheets/target-sheets.ts';
import { DeliveryRound } from '../delivery/delivery-round.ts';
import { PLANNER } from '../planners/planner.entity.ts';
import { Planners } from '../planners/planners.ts';
import { Gathering } from './gathering.ts';
import type { HandOffRow } from './hand-off.entity.ts';
import { newHandOff, sameAsBefore, type Asking } from './new-hand-off.ts';
import { Outbox } from './outbox.ts';

/** A request to hand a kept sheet on. */
export interface HandOnAsk extends Asking {
  readonly makerId: string;
  readonly targetSheetId: string;
  readonly plannerId: string;
}

const NO_SHEET = new DomainError('not-found', 'There is no target sheet with this id.');
const NO_PLANNER = new DomainError('planner-unknown', 'There is no planner with this id.', '/plannerId');

/** How many requests share one unit of work at most; a unit should not hold others up for long. */
const MOST_TOGETHER = 50;

/** Takes hand-offs on: each is written down before it is answered. The same request with the same key is answered as the first was. */
@Injectable()
export class Accepting {
  private readonly gathering = new Gathering<HandOnAsk, HandOffRow>(MOST_TOGETHER, (asks) =>
    retriedOnConflict(() => this.work.write((manager) => this.acceptAll(manager, asks))),
  );

  constructor(
    private readonly work: UnitOfWork,
    private readonly planners: Planners,
    private readonly sheets: TargetSheets,
    private readonly outbox: Outbox,
    private readonly round: DeliveryRound,
  ) {}

  /** Hands a kept sheet on. @throws DomainError `not-found`, `planner-unknown`, `idempotency-key-reused`, and of `newHandOff` */
  async send(ask: HandOnAsk): Promise<HandOffRow> {
    const row = await this.gathering.ask(ask);
    this.round.nudge();
    return row;
  }

  /** Makes a sheet, keeps it and hands it on: all of it is written, or nothing. @throws DomainError as `send`, and of the sheet */
  async makeAndSend(ask: Omit<HandOnAsk, 'targetSheetId'>, ids: InputIds, choices: SheetChoices): Promise<HandOffRow> {
    const { makerId, plannerId } = ask;
    const row = await retriedOnConflict(() =>
      this.work.write(async (manager) => {
        const [first] = await this.outbox.findByKeys(manager, [ask]);
        if (first) return sameAsBefore(first, ask);
        const planner = await this.planners.need(manager, makerId, plannerId);
        const made = newHandOff(await this.sheets.keepWithin(manager, makerId, ids, choices), planner, ask);
        await this.outbox.insert(manager, [made]);
        return made;
      }),
    );
    this.round.nudge();
    return row;
  }

  /** Each for itself: what one asks wrongly does not touch the others. */
  private async acceptAll(manager: EntityManager, asks: readonly HandOnAsk[]): Promise<(HandOffRow | Error)[]> {
    const planners = byId(await manager.findBy(PLANNER, { id: In(asks.map(({ plannerId }) => plannerId)) }));
    const sheetIds = In(asks.map(({ targetSheetId }) => targetSheetId));
    const select = ['id', 'makerId', 'sheet'] as const;
    const sheets = byId(await manager.find(TARGET_SHEET, { select: [...select], where: { id: sheetIds } }));
    const known = new Map((await this.outbox.findByKeys(manager, asks)).map((row) => [keyOf(row), row]));
    const made: HandOffRow[] = [];
    const answers = asks.map((ask) => {
      try {
        const first = known.get(keyOf(ask));
        if (first) return sameAsBefore(first, ask);
        const sheet = mine(sheets, ask.targetSheetId, ask.makerId, NO_SHEET);
        const planner = mine(planners, ask.plannerId, ask.makerId, NO_PLANNER);
        const row = newHandOff(sheet, planner, ask);
        if (ask.idempotencyKey !== null) known.set(keyOf(ask), row);
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

/** What this maker asks for. @throws DomainError with `refusal` where it is not there, or another's */
function mine<R extends { makerId: string }>(
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
