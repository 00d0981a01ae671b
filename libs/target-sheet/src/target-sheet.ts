import type { Craft, Directions, Fabric, Stitch } from '#fabric';
import type {
  AssembledDimension,
  Check,
  Collision,
  Piece,
  PieceDimension,
  SheetDesign,
  SheetNote,
} from './sheet-parts.ts';
import type { SheetYarn } from './sheet-yarn.ts';

export const FORMAT = 'easewright/target-sheet';
export const VERSION = '1.0';
/** The schema's `$id`: its name, wherever it is served. */
export const SCHEMA_ID = 'urn:easewright:schema:target-sheet:1';

/** The unit of every length in a sheet. */
export const SHEET_UNITS = ['mm', 'cm', 'in'] as const;
export type SheetUnit = (typeof SHEET_UNITS)[number];

/** A dimension of the finished garment or of a piece. */
export type AnyDimension = AssembledDimension | PieceDimension;

/** The document any planner can take in. Lengths in `unit`; fractions and probabilities are plain numbers. */
export interface TargetSheet {
  readonly format: typeof FORMAT;
  readonly version: string;
  readonly id: string;
  /** RFC 3339, UTC. */
  readonly createdAt: string;
  readonly title: string;
  readonly unit: SheetUnit;
  readonly craft: Craft;
  /** Null where none was said: stockinette for knit, single crochet for crochet. */
  readonly stitch: Stitch | null;
  /** Version of the rule table the sheet was made with. */
  readonly rulesVersion: string;
  readonly design: SheetDesign;
  readonly fabric: {
    readonly thickness: number;
    readonly u: number;
    readonly from: Fabric['from'];
    readonly stretch: Directions | null;
    readonly growth: Directions | null;
  };
  /** Absent where no piece is drawn, and in sheets made before it was given. */
  readonly yarn?: SheetYarn;
  readonly assembled: readonly AssembledDimension[];
  readonly pieces: readonly Piece[];
  readonly checks: readonly Check[];
  readonly collisions: readonly Collision[];
  readonly cautions: readonly SheetNote[];
  readonly notes: readonly SheetNote[];
}
