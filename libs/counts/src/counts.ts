import type { CountedFabric } from './counts-request.ts';
import type { Halves } from './halves.ts';
import type { Interval } from './spread.ts';

/** A dimension in whole stitches (across) or rows (along), and what it then measures in the sheet's unit. */
export interface CountedDimension {
  readonly name: string;
  readonly axis: 'across' | 'along';
  readonly fabric: CountedFabric;
  readonly count: number;
  /** Finished, without seam allowance. */
  readonly measures: number;
  /** As on the sheet, moved along with what it follows. */
  readonly low: number | null;
  readonly high: number | null;
  readonly within: boolean;
}

/** A part of a piece: what it begins with, and over how many rows it goes. */
export interface CountedRegion {
  readonly region: string;
  readonly fabric: 'main' | 'rib' | 'other';
  /** Null where the sheet names no width that it begins with. */
  readonly stitches: number | null;
  readonly rows: number;
  /** Stitches to increase (less than 0: decrease) on the way into the region above, all in one row. */
  readonly changeAbove: number;
}

/** Shaping of one side of a piece, from the edge where the work begins. */
export interface Shaping {
  readonly edge: string;
  /** Sides of the piece that are shaped so. */
  readonly sides: 1 | 2;
  readonly kind: 'increase' | 'decrease' | 'bind-off' | 'cast-on' | 'curve';
  /** Of one side; of a neck, of the whole of it. */
  readonly stitches: number;
  readonly rows: number;
  readonly fromRow: number;
  /** One stitch at a time: every so many rows. Empty for what is done at once, and for a curve; null where there are more stitches than rows. */
  readonly every: readonly Interval[] | null;
  /** Of a neck. */
  readonly halves?: Halves;
}

/** Stitches picked up along one edge of a piece for a band. */
export interface PickedUp {
  readonly piece: string;
  readonly edge: string;
  readonly length: number;
  readonly stitches: number;
  /** Rows of the edge, and stitches picked up a row, where it runs along rows; else null. */
  readonly rows: number | null;
  readonly perRow: number | null;
}

export interface CountedPiece {
  readonly piece: string;
  readonly dimensions: readonly CountedDimension[];
  readonly regions: readonly CountedRegion[];
  readonly shaping: readonly Shaping[];
  readonly pickUp: readonly PickedUp[];
  /** As counted, in the sheet's unit; null where the sheet draws none. */
  readonly outline: readonly (readonly [number, number])[] | null;
}

/** A dimension that no count keeps in its range: `no-count` where none lies in it, `not-together` where none does with the others. */
export interface OutsideRange {
  readonly piece: string;
  readonly name: string;
  readonly count: number;
  readonly measures: number;
  readonly low: number;
  readonly high: number;
  readonly reason: 'no-count' | 'not-together';
}

/** A sheet in whole stitches and rows. */
export interface Counts {
  /** Where the rib's stitches and rows are from. */
  readonly rib: 'own-gauge' | 'as-above';
  readonly pieces: readonly CountedPiece[];
  readonly outside: readonly OutsideRange[];
}
