import { EntitySchema } from 'typeorm';
import type { Failure } from '../delivery/failure.ts';

/** One try at sending a hand-off, and what came of it: the planner's answer, or why there was none. */
export interface AttemptRow {
  id: string;
  makerId: string;
  handOffId: string;
  at: string;
  milliseconds: number;
  status: number | null;
  failure: Failure | null;
  /** The first kilobyte of the planner's answer. */
  answer: string;
}

export const ATTEMPT = new EntitySchema<AttemptRow>({
  name: 'hand_off_attempt',
  columns: {
    id: { type: 'varchar', length: 36, primary: true },
    makerId: { type: 'varchar', length: 36, name: 'maker_id' },
    handOffId: { type: 'varchar', length: 36, name: 'hand_off_id' },
    at: { type: 'varchar', length: 30 },
    milliseconds: { type: 'integer' },
    status: { type: 'integer', nullable: true },
    failure: { type: 'varchar', length: 30, nullable: true },
    answer: { type: 'text' },
  },
});
