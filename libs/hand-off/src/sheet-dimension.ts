import type { AnyDimension, TargetSheet } from '#target-sheet';

type PieceName = TargetSheet['pieces'][number]['piece'];

export type SheetDimension = AnyDimension;
export type PieceDimension = TargetSheet['pieces'][number]['dimensions'][number];
/** The names of the body's measures a dimension without a value needs. */
export type Needs = NonNullable<SheetDimension['noAdvice']>['needs'];

/** A dimension and where it stands: `assembled` or the name of its piece. */
export interface PlacedDimension {
  readonly place: PieceName | 'assembled';
  readonly dimension: SheetDimension;
}

/** Every dimension of a sheet, the assembled ones first, then piece by piece. */
export function placedDimensions(sheet: TargetSheet): PlacedDimension[] {
  return [
    ...sheet.assembled.map((dimension) => ({ place: 'assembled' as const, dimension })),
    ...sheet.pieces.flatMap(({ piece, dimensions }) => dimensions.map((dimension) => ({ place: piece, dimension }))),
  ];
}

export const isOnPiece = (dimension: SheetDimension): dimension is PieceDimension => 'asMade' in dimension;

/** A sheet without what no planner's own document takes in: reasons, outlines, checks. Less to convert. */
export function dimensionsOnly(sheet: TargetSheet): TargetSheet {
  const bare = <D extends SheetDimension>(dimension: D): D => ({ ...dimension, because: [] });
  return {
    ...sheet,
    checks: [],
    assembled: sheet.assembled.map(bare),
    pieces: sheet.pieces.map(({ outline: _, ...piece }) => ({
      ...piece,
      edges: [],
      regions: [],
      identities: [],
      dimensions: piece.dimensions.map(bare),
    })),
  };
}

/** The sheet with some of its dimensions put in the place of others. */
export function withDimensions(
  sheet: TargetSheet,
  replacement: <D extends SheetDimension>(dimension: D) => D,
): TargetSheet {
  return {
    ...sheet,
    assembled: sheet.assembled.map(replacement),
    pieces: sheet.pieces.map((piece) => ({ ...piece, dimensions: piece.dimensions.map(replacement) })),
  };
}
