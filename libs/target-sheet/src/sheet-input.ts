import type { Body } from '#body';
import type { FabricInput } from '#fabric';
import type { Design, MadePiece } from '#fit';
import type { Garment } from '#garment';
import type { SheetUnit } from './target-sheet.ts';

/** Everything a sheet is made from, in mm and g. The API and the page both build this and nothing else. */
export interface SheetInput {
  readonly title: string;
  readonly body: (Body & { readonly estimate: boolean }) | null;
  readonly garment: Garment | null;
  readonly fabric: FabricInput;
  readonly design: Design;
  readonly made: readonly MadePiece[];
  /** Overrides of the rule table, by name. */
  readonly rules: Readonly<Record<string, number>>;
  readonly unit: SheetUnit;
}
