import type { CountablePiece, CountableRegion } from './countable-sheet.ts';
import type { CountedRegion } from './counts.ts';
import { widthAt } from './gauges.ts';
import { keyOf } from './node.ts';
import type { Places } from './places.ts';

/** The regions of a piece in stitches and rows. `countOf`: of a dimension, by key; undefined where it was not counted. */
export function regionsOf(
  piece: CountablePiece,
  places: Places,
  countOf: (key: string) => number | undefined,
): CountedRegion[] {
  const stitchesAt = (width: number | undefined, fabric: CountableRegion['fabric']): number | null => {
    if (width === undefined || fabric === 'other') return null;
    const found = widthAt(width, piece, fabric) ?? widthAt(width, piece, fabric === 'rib' ? 'main' : 'rib');
    return found ? (countOf(keyOf(piece.piece, found.name)) ?? null) : null;
  };
  return piece.regions.map((region, index) => {
    const above = piece.regions[index + 1];
    const next = above ? stitchesAt(region.startsAt ?? above.width, above.fabric) : null;
    const stitches = (region.stitches === 'as-above' ? next : null) ?? stitchesAt(region.width, region.fabric);
    return {
      region: region.region,
      fabric: region.fabric,
      stitches,
      rows: Math.round(places.along(region.to).count - places.along(region.from).count),
      changeAbove: next === null || stitches === null ? 0 : next - stitches,
    };
  });
}
