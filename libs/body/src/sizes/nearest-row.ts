import type { SizeRange, SizeRow } from './published-sizes.ts';

/** Where a value lies in a table: inside a row, between two, or beyond its ends. */
export type Lies = 'in' | 'between' | 'below' | 'above';

/** `row` is null where the value lies further beyond an end than half the way between the last two sizes. */
export interface NearestRow {
  readonly row: SizeRow | null;
  readonly lies: Lies;
  /** The rows on both sides of the value; the end row alone beyond an end. */
  readonly neighbours: readonly SizeRow[];
}

/** Numbers that came through inches are equal within this (a rounding error, not a tolerance). */
const SAME = 1e-6;

/**
 * The row of an ascending table that lies nearest to a value. Between two rows equally near it takes the larger: a garment a
 * little roomy is worn, one a little tight is not (practice). Within `reading` of a row's range a value is read as in it.
 */
export function nearestRow(
  rows: readonly SizeRow[],
  rangeOf: (row: SizeRow) => SizeRange | undefined,
  value: number,
  reading = SAME,
): NearestRow {
  const ranged = rows.flatMap((row) => {
    const range = rangeOf(row);
    return range === undefined ? [] : [{ row, range }];
  });
  const inside = ranged.find(({ range }) => range.low - reading <= value && value <= range.high + reading);
  if (inside !== undefined) return { row: inside.row, lies: 'in', neighbours: [inside.row] };

  const above = ranged.find(({ range }) => range.low > value);
  const below = ranged.findLast(({ range }) => range.high < value);
  if (above !== undefined && below !== undefined) {
    const nearer = value - below.range.high < above.range.low - value - SAME ? below : above;
    return { row: nearer.row, lies: 'between', neighbours: [below.row, above.row] };
  }

  const [end, next] = above !== undefined ? ranged : ranged.toReversed();
  if (end === undefined) return { row: null, lies: 'above', neighbours: [] };
  const lies = above !== undefined ? 'below' : 'above';
  const distance = lies === 'below' ? end.range.low - value : value - end.range.high;
  const gap = next === undefined ? 0 : Math.max(next.range.low - end.range.high, end.range.low - next.range.high);
  return { row: distance <= gap / 2 + SAME ? end.row : null, lies, neighbours: [end.row] };
}
