import type { CountablePiece } from './countable-sheet.ts';
import { middleOf } from './middle.ts';
import type { Places } from './places.ts';

/** A point of an outline as counted: in the sheet's unit, in stitches from the middle line and in rows from the lower edge. */
export interface CountedPoint {
  readonly point: readonly [number, number];
  readonly stitches: number;
  readonly rows: number;
}

/** The outline of a piece as counted, its points in the sheet's order. Empty where the sheet draws none. */
export function countedOutline(piece: CountablePiece, places: Places): CountedPoint[] {
  const middle = middleOf(piece);
  const points = (piece.outline ?? []).map(([x, y]) => {
    const away = places.across(Math.abs(x - middle.at));
    const side = x < middle.at ? -1 : 1;
    const up = places.along(y);
    return { point: [side * away.length, up.length] as const, stitches: side * away.count, rows: up.count };
  });
  const left = points[0]?.point[0] ?? 0;
  return points.map(({ point: [x, y], ...rest }) => ({ ...rest, point: [x - left, y] as const }));
}
