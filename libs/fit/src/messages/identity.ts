import type { PieceName } from '../design/piece-name.ts';
import type { DimensionName } from './dimension-name.ts';

/** Some times a dimension: of the same piece, or of another. */
export interface IdentityTerm {
  readonly piece?: PieceName;
  readonly name: DimensionName;
  readonly times: number;
}

/** A dimension of a piece that others give: `Σ times × value + plus`. mm */
export interface Identity {
  readonly name: DimensionName;
  readonly equals: readonly IdentityTerm[];
  readonly plus?: number;
}
