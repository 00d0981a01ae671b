import type { SheetUnit } from '#target-sheet';

/** How a sheet is written for a planner: the sheet itself, one JSON value of named fields, or CSV. */
export const PLANNER_FORMATS = ['sheet', 'flat', 'csv'] as const;
export type PlannerFormat = (typeof PLANNER_FORMATS)[number];

/**
 * What a planner takes in.
 *
 * - `unit`: of every length it is sent.
 * - `roundingStep`: lengths go as whole multiples of it, in `unit` (0.125 with `in` is an eighth of an inch); null leaves
 *   them as they are. A sheet as such is never rounded (its terms would no longer add up): null there.
 * - `names`: from our name (see `parseOurName`) to the planner's: a JSON Pointer (RFC 6901) for `flat`, a column for
 *   `csv`. Only what is named is sent. Empty sends everything under our own names. A sheet as such has our names: empty there.
 * - `required`: our names without which the planner cannot work.
 */
export interface PlannerTakes {
  readonly unit: SheetUnit;
  readonly roundingStep: number | null;
  readonly format: PlannerFormat;
  readonly names: Readonly<Record<string, string>>;
  readonly required: readonly string[];
}

/** Any JSON value. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
