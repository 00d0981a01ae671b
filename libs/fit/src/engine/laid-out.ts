import type { Quantity } from '#measure';

/** The values of all quantities of a tape, each in its place; NaN where one is not known. */
export type Values = number[];

/** Quantities laid out in the order in which they are evaluated: inputs first, each further place computed from places before it. */
export interface LaidOut {
  /** How many inputs there are. */
  readonly inputs: number;
  /** Where a named quantity stands. */
  readonly place: (of: Quantity) => number;
  /** The places that a place is computed from; an input's are none. */
  readonly sources: (place: number) => readonly number[];
  /** Where the sources of a place begin among those of all. */
  readonly start: (place: number) => number;
  /** The values of all quantities for those of the inputs. */
  readonly evaluate: (inputs: readonly number[]) => Values;
  /** The partial derivative of each place by each of its sources, counted among the sources of all places. */
  readonly partials: (v: Values) => readonly number[];
}
