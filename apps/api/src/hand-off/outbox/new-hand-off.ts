import { ApiError } from '../../http/api-error.ts';
import { clock } from '../../clock/steady-clock.ts';
import { newId } from '../../storage/new-id.ts';
import type { TargetSheetRow } from '../../target-sheets/target-sheet.entity.ts';
import { keyReused } from '../../idempotency/idempotency-key.ts';
import { tryUntil } from '../delivery/back-off.ts';
import type { PlannerRow } from '../planners/planner.entity.ts';
import type { HandOffRow } from './hand-off.entity.ts';
import { packSheet } from './package.ts';

/** How a request to hand on is known again, and where planners reach this service. */
export interface RequestIdentity {
  readonly idempotencyKey: string | null;
  readonly fingerprint: string;
  readonly origin: string;
}

/**
 * A hand-off to be written down, due at once.
 *
 * @throws DomainError `planner-without-address`, `planner-stopped`, `planner-lacks`, `payload-too-large`
 */
export function newHandOff(
  { id, sheet }: Pick<TargetSheetRow, 'id' | 'sheet'>,
  planner: PlannerRow,
  { idempotencyKey, fingerprint, origin }: RequestIdentity,
): HandOffRow {
  mustBeReachable(planner);
  const { contentType, body } = packSheet({ id, sheet }, planner.document, origin);
  const now = clock.now();
  return {
    id: newId(),
    makerId: planner.makerId,
    plannerId: planner.id,
    targetSheetId: id,
    createdAt: now.toISOString(),
    contentType,
    body,
    state: 'waiting',
    attempts: 0,
    nextTryAt: now.toISOString(),
    tryUntil: tryUntil(now),
    claimedUntil: null,
    idempotencyKey,
    fingerprint,
  };
}

function mustBeReachable({ document: { title, address }, state }: PlannerRow): void {
  if (address === null) {
    const words = `${title} has no address to send to; give it one, or hand the sheet on by hand.`;
    throw new ApiError('planner-without-address', words);
  }
  if (state === 'stopped') {
    const words = `${title} answered that it wants nothing more (410). Resume it to send again.`;
    throw new ApiError('planner-stopped', words);
  }
}

/** The first hand-off of a key, where the request is the same as then. @throws DomainError `idempotency-key-reused` */
export function sameAsBefore(first: HandOffRow, { fingerprint }: RequestIdentity): HandOffRow {
  if (first.fingerprint === fingerprint) return first;
  throw keyReused();
}
