import type { Quantity } from '#measure';
import type { DimensionName, IdentityTerm, PieceName } from '../messages/advice.ts';

/** How far a number may be rounded before any check limits it: the ease band, or the rule for all else; of a depth some is left. */
type Range = 'band' | 'length' | 'depth';

/** The number that is rounded with a dimension. All that depends on it follows. */
export interface Rounded {
  readonly quantity: Quantity;
  readonly range: Range;
  /** It was made already, and stays. */
  readonly fixed: boolean;
}

/** One dimension of a sheet. */
export interface Planned {
  readonly name: DimensionName;
  readonly quantity: Quantity;
  readonly rounded: Rounded;
  /** It is a formula of the sheet's other numbers alone, as the length of an edge, and is worked out again when they are rounded. */
  readonly derived: boolean;
}

/** One of a piece: its axis and fabric, and how many of its ends are joined to something (each takes a seam allowance). */
export interface PlannedOnPiece extends Planned {
  readonly axis: 'across' | 'along';
  readonly fabric: 'main' | 'rib';
  readonly joinedEnds: 0 | 1 | 2;
  /** The dimensions that add up to it; null for one that a planner rounds by itself, or that is derived. */
  readonly equals: readonly IdentityTerm[] | null;
}

export interface PlannedPiece {
  readonly piece: PieceName;
  readonly make: number;
  readonly mirrored: number;
  readonly workedFrom: 'hem' | 'cuff' | 'edge';
  readonly dimensions: readonly PlannedOnPiece[];
}

/** A length that is rounded by itself. */
export const byItself = (quantity: Quantity, fixed = false): Rounded => ({ quantity, range: 'length', fixed });

type OnPiece = (
  name: DimensionName,
  quantity: Quantity,
  joinedEnds: 0 | 1 | 2,
  rounded?: Rounded,
  fabric?: 'main' | 'rib',
) => PlannedOnPiece;

/** Marks a dimension that is a formula of the others. */
export const derived = <P extends Planned>(planned: P): P => ({ ...planned, derived: true });

/** A dimension of a piece that others give. */
export const equalTo = (planned: PlannedOnPiece, ...equals: readonly IdentityTerm[]): PlannedOnPiece => ({
  ...planned,
  equals,
});

/** A term of an identity, of the same piece or of another. */
export const term = (times: number, name: DimensionName, piece?: PieceName): IdentityTerm => ({
  ...(piece && { piece }),
  name,
  times,
});

const onPiece =
  (axis: 'across' | 'along'): OnPiece =>
  (name, quantity, joinedEnds, rounded = byItself(quantity), fabric = 'main') => ({
    name,
    quantity,
    axis,
    fabric,
    joinedEnds,
    rounded,
    derived: false,
    equals: null,
  });

/** A dimension that is made of stitches. */
export const across = onPiece('across');
/** A dimension that is made of rows. */
export const along = onPiece('along');
