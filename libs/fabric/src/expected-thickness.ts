import table from './expected-thickness.json' with { type: 'json' };
import type { Stitch } from './stitch.ts';

/** How thick a fabric of that weight of yarn is expected to be, mm; `assumed` where the table has no column for it. */
export interface ThicknessRange {
  readonly category: number;
  readonly from: number;
  readonly to: number;
  readonly assumed: boolean;
}

/** By stitch, then in the order of the categories, 0 (lace) to 7 (jumbo). */
export const EXPECTED_THICKNESS: Readonly<Record<Stitch, readonly ThicknessRange[]>> = table;
export const EXPECTED_THICKNESS_SOURCE: string = table.source;
