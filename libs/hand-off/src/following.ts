import type { TargetSheet } from '#target-sheet';
import { placedDimensions, type SheetDimension } from './sheet-dimension.ts';

/** How a dimension moves when another is rounded, as the sheet's `follows` say: piece and name. mm a mm. */
export type Rate = (from: SheetDimension, to: SheetDimension) => number;

/** Reads the `follows` of a sheet. */
export function ratesOf(sheet: TargetSheet): Rate {
  const places = new Map(placedDimensions(sheet).map(({ place, dimension }) => [dimension, place]));
  return (from, to) => {
    if (from === to) return 1;
    const place = places.get(to);
    return from.follows?.find(({ piece, name }) => piece === place && name === to.name)?.slope ?? 0;
  };
}
