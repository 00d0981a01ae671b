import type { PlannerWarning } from '#advice-text';
import type { DomainError } from '#measure';
import type { TargetSheet } from '#target-sheet';
import type { Json, PlannerTakes } from '../planner-takes.ts';

/** Something to know before sending: a name left out, or a length rounded further than it may be. */
export type MappingWarning = PlannerWarning & { readonly name: string };

/** A sheet as written: a JSON value, or the text of a CSV. */
interface Written {
  readonly payload: Json;
  readonly warnings: readonly MappingWarning[];
}

/** One way of writing a sheet for a planner. */
export interface Format {
  readonly contentType: string;
  /** Whether its lengths may be rounded to a step. */
  readonly rounds: boolean;
  /** What is wrong with the planner's names, where a sheet cannot be written under them. */
  readonly nameFaults: (names: PlannerTakes['names']) => readonly DomainError[];
  /** Writes a sheet that has all that is required, for a planner whose names have no faults. */
  readonly write: (sheet: TargetSheet, takes: PlannerTakes) => Written;
}
