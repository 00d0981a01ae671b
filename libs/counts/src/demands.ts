import type { CountableDimension, CountablePiece } from './countable-sheet.ts';
import { countsError } from './counts-errors.ts';
import type { CountedFabric, CountsRequest } from './counts-request.ts';
import { isSame, lengthOf, pitchOf } from './gauges.ts';
import type { Demand } from './node.ts';

/**
 * What the count of a dimension must be a multiple of: rows are even where that is asked, and the stitches that a region
 * begins with are as its fabric, and a rib on the same stitches, asks.
 *
 * @throws DomainError `multiple-larger-than-piece`
 */
export function demandsOn(dimension: CountableDimension, piece: CountablePiece, request: CountsRequest): Demand[] {
  if (dimension.axis === 'along') return request.evenRows ? [{ of: 2, plus: 0 }] : [];
  const fabrics = fabricsBegunAt(dimension, piece);
  const repeats = fabrics.flatMap((fabric) => repeatOf(fabric, dimension, piece, request));
  if (request.parity === null || !fabrics.includes('main')) return repeats;
  return [...repeats, { of: 2, plus: request.parity === 'odd' ? 1 : 0 }];
}

/** The fabrics whose stitches begin at a width. */
function fabricsBegunAt({ fabric, value }: CountableDimension, { regions }: CountablePiece): CountedFabric[] {
  const begun = regions.flatMap((region) => {
    const width = region.stitches === 'as-above' ? (region.startsAt ?? region.width) : region.width;
    const here = width !== undefined && value !== null && isSame(width, value);
    if (!here || region.fabric === 'other') return [];
    return region.stitches === 'as-above' || region.fabric === fabric ? [region.fabric] : [];
  });
  return [...new Set(begun)];
}

/** The demand of a fabric's repeat on the stitches of a piece's dimension, or of a band's. */
export function repeatOf(
  fabric: CountedFabric,
  dimension: CountableDimension,
  piece: CountablePiece,
  request: CountsRequest,
): Demand[] {
  const repeat = request.multiple[fabric];
  if (repeat === null) return [];
  const [of, plus] = repeat;
  const stitches = lengthOf(dimension) / pitchOf(dimension, piece, request).pitch;
  if (of + plus > stitches + 1) {
    const params = {
      fabric,
      multiple: of,
      plus,
      piece: piece.piece,
      name: dimension.name,
      stitches: Math.round(stitches),
    };
    throw countsError('multiple-larger-than-piece', params, `/multiple/${fabric}`);
  }
  return [{ of, plus }];
}
