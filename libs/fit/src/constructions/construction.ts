import type { GarmentDimension } from '#garment';
import type { Quantity } from '#measure';
import type { DimensionName } from '../messages/advice.ts';
import type { Choices } from '../design/choices.ts';
import type { Armhole, BeforeArmhole, Widths } from '../model/armhole.ts';
import type { Girths } from '../model/girths.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import type { InputName } from '../model/inputs.ts';
import type { PlannedOnPiece } from '../model/planned.ts';
import type { BeforeSleeve, SleeveTop } from '../model/sleeve.ts';
import type { Path, ValueOf } from '../model/path.ts';
import type { RuleName, Rules } from '../design/rules.ts';

/** All that the model asks of a construction. */
export interface ConstructionModel {
  /** The rule by which its armhole is deeper than a set-in's; null for none. */
  readonly deeper: RuleName | null;
  /** The rules that are inputs of its formulas alone. */
  readonly ruled: readonly {
    readonly input: InputName;
    readonly rule: Extract<RuleName, 'squared-inset-most' | 'set-in-inset-least' | 'armhole-curve-most'>;
  }[];
  /** The measures of finished pieces that it alone has: its armhole's depth on a body, and the rise of its sleeve's top. */
  readonly madeNames: { readonly depth: DimensionName; readonly rise: DimensionName | null };
  /** Whether the top of its sleeve is a girth, or a seam along a straight edge. */
  readonly sleeveTopIs: 'girth' | 'seam';
  /** Whether it has an armhole, with a shoulder above it. */
  readonly hasArmhole: boolean;
  /** Whether the rises of sleeve and body along their common edge are to be compared. */
  readonly comparesRises: boolean;
  /** Whether a garment of this construction that fits has an across back of its own. */
  readonly hasAcrossBack: boolean;
  /** The measures of a garment of this construction that its sleeve, from the seam, needs for the way from nape to cuff: any one, where there are any. */
  readonly refSleeveNeeds: readonly GarmentDimension[];
  /** How much of the neck's width on the piece the back's neck edge has. */
  readonly neckShare: (rules: Rules) => number;
  /** Nape to cuff of a garment of this construction that fits, mm. */
  readonly refNapeToCuff: (choices: Choices) => Quantity;
  readonly widths: (choices: Choices, girths: Girths) => Widths;
  readonly armhole: (choices: Choices, before: BeforeArmhole) => Armhole;
  readonly sleeveTop: (choices: Choices, before: BeforeSleeve) => SleeveTop;
  /** The dimensions of its armhole on a body piece, and of its top on the sleeve. */
  readonly bodyDimensions: (m: GarmentModel, front: boolean) => readonly PlannedOnPiece[];
  readonly sleeveDimensions: (m: GarmentModel) => readonly PlannedOnPiece[];
  /** The right side of a body piece from the underarm's corner, at `side`, to the shoulder's tip or the neck. */
  readonly armholePath: (v: ValueOf, m: GarmentModel, side: SideOfBody) => Path;
  /** The right side of a sleeve from the underarm's corner to the top's middle. */
  readonly sleeveTopPath: (v: ValueOf, m: GarmentModel, middle: number) => Path;
}

/** Where on a body piece its right side is, mm from its left edge. */
export interface SideOfBody {
  readonly panel: number;
  /** The armhole's edge, and the neck's. */
  readonly edge: number;
  readonly neck: number;
}
