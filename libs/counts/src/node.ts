import type { CountableDimension } from './countable-sheet.ts';

/** Of a dimension, within a sheet. */
export const keyOf = (piece: string, name: string): string => `${piece}/${name}`;

/** A count that is asked for: a multiple of `of`, plus `plus`. */
export interface Demand {
  readonly of: number;
  readonly plus: number;
}

/** A dimension that is counted. Lengths in the sheet's unit, seam allowance included. */
export interface Node {
  readonly key: string;
  readonly piece: string;
  readonly dimension: CountableDimension;
  /** As on the sheet, and how far it may be rounded. */
  readonly length: number;
  readonly low: number;
  readonly high: number;
  /** Width of a stitch or height of a row. */
  readonly pitch: number;
  /** Nodes of one unit are counted in the same stitches or rows. */
  readonly unit: string;
  /** The rib below it, counted by itself at a gauge of its own; null where the rows are all alike. */
  readonly ribBelow: string | null;
  readonly demands: readonly Demand[];
}
