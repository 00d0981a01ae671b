import { EntitySchema } from 'typeorm';
import { RECORD_COLUMNS, type RecordRow } from '../../records/record.entity.ts';
import type { PlannerDocument } from './planner-document.ts';

/** `stopped`: the planner answered 410 and wants nothing more; `paused`: the maker wants nothing sent for now. */
export const PLANNER_STATES = ['active', 'paused', 'stopped'] as const;
export type PlannerState = (typeof PLANNER_STATES)[number];

/** A signing secret as it is stored. */
export interface SealedSecret {
  readonly sealed: string;
  readonly madeAt: string;
  /** Until when it still signs beside the newer one; null for the newest. */
  readonly validUntil: string | null;
}

export interface PlannerRow extends RecordRow<PlannerDocument> {
  state: PlannerState;
  /** The planner asked to slow down: nothing is sent before then. */
  restingUntil: string | null;
  /** Newest first: one, or two while one replaces the other. None where the planner has no address. */
  secrets: SealedSecret[];
}

export const PLANNER = new EntitySchema<PlannerRow>({
  name: 'planner',
  columns: {
    ...RECORD_COLUMNS,
    state: { type: 'varchar', length: 10 },
    restingUntil: { type: 'varchar', length: 30, name: 'resting_until', nullable: true },
    secrets: { type: 'simple-json' },
  },
});
