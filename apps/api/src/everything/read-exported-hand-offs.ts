import { FAILURES, type Failure } from '../hand-off/delivery/failure.ts';
import type { AttemptRow } from '../hand-off/outbox/attempt.entity.ts';
import { HAND_OFF_STATES, type HandOffRow } from '../hand-off/outbox/hand-off.entity.ts';
import type { FieldError } from '../http/problem.ts';
import { ImportFields } from './import-fields.ts';

/** Hand-offs, and every attempt at them. */
export interface HandOffRows {
  readonly handOffs: readonly HandOffRow[];
  readonly attempts: readonly AttemptRow[];
}

interface KnownIds {
  readonly sheetIds: ReadonlySet<string>;
  readonly plannerIds: ReadonlySet<string>;
}

const MOST = 2_147_483_647;
const LONGEST_BODY = 1_000_000;

export function readHandOffs(
  top: ImportFields,
  makerId: string,
  { sheetIds, plannerIds }: KnownIds,
  errors: FieldError[],
): HandOffRows {
  const attempts: AttemptRow[] = [];
  const handOffs = top.list('handOffs', (item, pointer): HandOffRow => {
    const row = new ImportFields(item, pointer, errors);
    const id = row.id('id');
    attempts.push(...row.list('attempts', (each, at) => attemptOf(new ImportFields(each, at, errors), makerId, id)));
    return {
      id,
      makerId,
      plannerId: row.idOf('plannerId', plannerIds),
      targetSheetId: row.idOf('targetSheetId', sheetIds),
      createdAt: row.time('createdAt'),
      contentType: row.text('contentType', 60),
      body: row.text('body', LONGEST_BODY),
      state: row.choice('state', HAND_OFF_STATES),
      attempts: row.whole('tries', 0, MOST),
      nextTryAt: row.orNull('nextTryAt', () => row.time('nextTryAt')),
      tryUntil: row.time('tryUntil'),
      claimedUntil: null,
      idempotencyKey: row.orNull('idempotencyKey', () => row.text('idempotencyKey', 200)),
      fingerprint: row.text('fingerprint', 64),
    };
  });
  const keys = handOffs.flatMap(({ idempotencyKey }) => (idempotencyKey === null ? [] : [idempotencyKey]));
  if (new Set(keys).size < keys.length) top.wrong('handOffs', 'must have each idempotencyKey once', null);
  return { handOffs, attempts };
}

function attemptOf(row: ImportFields, makerId: string, handOffId: string): AttemptRow {
  return {
    id: row.id('id'),
    makerId,
    handOffId,
    at: row.time('at'),
    milliseconds: row.whole('milliseconds', 0, MOST),
    status: row.orNull('status', () => row.whole('status', 0, 999)),
    failure: row.orNull('failure', () => row.choice('failure', Object.keys(FAILURES) as Failure[])),
    answer: row.text('answer', 10_000),
  };
}

/** A hand-off as an export has it; what a process has claimed is not part of it. */
export function exportedHandOff(
  { makerId: _maker, claimedUntil: _claim, attempts: tries, ...row }: HandOffRow,
  attempts: readonly AttemptRow[],
): object {
  return { ...row, tries, attempts: attempts.map(({ makerId: _m, handOffId: _h, ...attempt }) => attempt) };
}
