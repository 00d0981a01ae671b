import type { CountablePiece, CountableDimension } from './countable-sheet.ts';
import type { CountsRequest, Gauge } from './counts-request.ts';

/** How a dimension is counted: in which stitches or rows, and how wide or high one is. */
interface Pitch {
  readonly unit: string;
  readonly pitch: number;
}

/** How each dimension of a piece is counted. A rib without a gauge of its own takes the stitches of what lies above it. */
export function pitchOf(dimension: CountableDimension, piece: CountablePiece, { gauge }: CountsRequest): Pitch {
  const { axis, fabric } = dimension;
  const own = fabric === 'rib' ? gauge.rib : gauge.main;
  if (own !== null) return { unit: `${axis} ${fabric}`, pitch: pitchAt(own, axis) };
  const pitch = pitchAt(gauge.main, axis);
  const above = axis === 'across' ? aboveRib(dimension, piece) : null;
  if (above === null) return { unit: `${axis} main`, pitch };
  return { unit: 'across main', pitch: (pitch * lengthOf(dimension)) / lengthOf(above) };
}

const pitchAt = (gauge: Gauge, axis: 'across' | 'along'): number =>
  gauge.over / (axis === 'across' ? gauge.stitches : gauge.rows);

/** As made: seam allowance included. */
export const lengthOf = ({ value, allowance }: CountableDimension): number => (value ?? NaN) + allowance;

/** Less than this part of a length is no difference. */
const SAME = 1e-6;

/** Whether two lengths of a sheet are one. */
export const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));

/** The width on whose stitches a rib of its own width is worked; null where the dimension is no such rib's. */
export function aboveRib(dimension: CountableDimension, piece: CountablePiece): CountableDimension | null {
  if (dimension.fabric !== 'rib' || dimension.value === null) return null;
  const { value } = dimension;
  const rib = piece.regions.find(
    ({ fabric, stitches, width }) =>
      fabric === 'rib' && stitches === 'own' && width !== undefined && isSame(width, value),
  );
  if (rib?.startsAt === undefined) return null;
  return widthAt(rib.startsAt, piece, 'main');
}

/** The dimension across a piece that has a width. */
export function widthAt(width: number, piece: CountablePiece, fabric: 'main' | 'rib'): CountableDimension | null {
  const found = piece.dimensions.find(
    (each) => each.axis === 'across' && each.fabric === fabric && each.value !== null && isSame(each.value, width),
  );
  return found ?? null;
}
