import type { FabricInput } from '#fabric';
import type { DesignWish, MadePiece, WearerBody } from '#fit';
import type { Garment } from '#garment';
import type { SheetUnit } from './target-sheet.ts';

/** A garment that fits; `basis`: the design is based on it. */
export type SheetGarment = Garment & { readonly basis: boolean };

/** Everything a sheet is made from, in mm and g. The API and the page both build this and nothing else. */
export interface SheetInput {
  readonly title: string;
  readonly body: WearerBody | null;
  /** Garments that fit. */
  readonly garments: readonly SheetGarment[];
  readonly fabric: FabricInput;
  readonly design: DesignWish;
  readonly made: readonly MadePiece[];
  /** Overrides of the rule table, by name. */
  readonly rules: Readonly<Record<string, number>>;
  readonly unit: SheetUnit;
}
