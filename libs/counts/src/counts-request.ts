export const COUNTED_FABRICS = ['main', 'rib'] as const;
export type CountedFabric = (typeof COUNTED_FABRICS)[number];

/** So many stitches and rows over a length, which is in the unit of the sheet that is counted. */
export interface Gauge {
  readonly stitches: number;
  readonly rows: number;
  readonly over: number;
}

/** A multiple of the first, plus the second. */
export type Multiple = readonly [of: number, plus: number];

export const PARITIES = ['odd', 'even'] as const;
export type Parity = (typeof PARITIES)[number];

/** How a sheet is to be counted. */
export interface CountsRequest {
  /** Without a gauge of its own the rib is worked on the stitches above it, and its rows are as high as the main fabric's. */
  readonly gauge: { readonly main: Gauge; readonly rib: Gauge | null };
  /** Of the stitches that a piece, or a band, begins with. */
  readonly multiple: Readonly<Record<CountedFabric, Multiple | null>>;
  /** Of the stitches that a piece begins with, in the main fabric. */
  readonly parity: Parity | null;
  /** Whether every length has an even number of rows. */
  readonly evenRows: boolean;
}
