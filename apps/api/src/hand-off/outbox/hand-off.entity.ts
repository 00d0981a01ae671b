import { EntitySchema } from 'typeorm';

/** `waiting`: to be sent, for the first time or again; `dead`: given up, until the maker sends it again. */
export const HAND_OFF_STATES = ['waiting', 'arrived', 'dead'] as const;
export type HandOffState = (typeof HAND_OFF_STATES)[number];

/** A sheet on its way to a planner: exactly what leaves, and how far it has come. Times are RFC 3339, UTC, to the millisecond. */
export interface HandOffRow {
  /** UUID v7; also the `webhook-id`, the same for every attempt. */
  id: string;
  makerId: string;
  plannerId: string;
  targetSheetId: string;
  createdAt: string;
  contentType: string;
  /** What is sent, frozen when it was handed on. */
  body: string;
  state: HandOffState;
  /** How often it has been tried. */
  attempts: number;
  /** When it is due; null when there is nothing more to do. */
  nextTryAt: string | null;
  /** After this it is given up. */
  tryUntil: string;
  /** While a process has it in hand; past, it may be taken by any. */
  claimedUntil: string | null;
  /** What the maker's program called this request, so that asking twice hands on once. */
  idempotencyKey: string | null;
  /** Of the request, so that the same key is not used for another. */
  fingerprint: string;
}

export const HAND_OFF = new EntitySchema<HandOffRow>({
  name: 'hand_off',
  columns: {
    id: { type: 'varchar', length: 36, primary: true },
    makerId: { type: 'varchar', length: 36, name: 'maker_id' },
    plannerId: { type: 'varchar', length: 36, name: 'planner_id' },
    targetSheetId: { type: 'varchar', length: 36, name: 'target_sheet_id' },
    createdAt: { type: 'varchar', length: 30, name: 'created_at' },
    contentType: { type: 'varchar', length: 60, name: 'content_type' },
    body: { type: 'text' },
    state: { type: 'varchar', length: 10 },
    attempts: { type: 'integer' },
    nextTryAt: { type: 'varchar', length: 30, name: 'next_try_at', nullable: true },
    tryUntil: { type: 'varchar', length: 30, name: 'try_until' },
    claimedUntil: { type: 'varchar', length: 30, name: 'claimed_until', nullable: true },
    idempotencyKey: { type: 'varchar', length: 200, name: 'idempotency_key', nullable: true },
    fingerprint: { type: 'varchar', length: 64 },
  },
});
