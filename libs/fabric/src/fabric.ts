import type { FabricNote, FabricSource } from './fabric-messages.ts';
import type { Fibre } from './fibre.ts';
import type { Stitch } from './stitch.ts';

export const CRAFTS = ['knit', 'crochet'] as const;
export type Craft = (typeof CRAFTS)[number];

/** Where the thickness is from, in order of trust. */
export const THICKNESS_SOURCES = ['measured', 'yarn', 'category'] as const;

/** Two directions of a piece: across (stitches) and along (rows). Fractions: 0.05 is five percent. */
export interface Directions {
  readonly across: number;
  readonly along: number;
}

/** A fabric ready for the arithmetic of fit. */
export interface Fabric {
  readonly craft: Craft;
  readonly thicknessMm: number;
  readonly thicknessU: number;
  readonly from: (typeof THICKNESS_SOURCES)[number];
  /** The same with its numbers: how many wraps, which category. */
  readonly source: FabricSource;
  /** (washed − before)/before; null without a swatch, and then taken as 0 with a note. */
  readonly growth: Directions | null;
  /** (pulled − at rest)/at rest of the main fabric as measured; null when it was not. Usable is half of it. */
  readonly stretch: Directions | null;
  /** Usable stretch of the main fabric across, a fraction: half of what was measured, else what is usual for the craft. */
  readonly mainUsable: number;
  /** Usable stretch of the rib across, a fraction: half of what was measured, else the craft's default. */
  readonly ribUsable: number;
  readonly ribMeasured: boolean;
  /** Grams a square metre, null when unknown. */
  readonly massPerAreaGsm: number | null;
  readonly notes: readonly FabricNote[];
}

/** What the maker knows of her yarn and swatch; null or absent where she does not. Lengths in mm, fractions plain. */
export interface FabricInput {
  readonly craft: Craft;
  /** Default: stockinette for knit, single crochet for crochet. */
  readonly stitch: Stitch | null;
  /** Of one layer, from four layers under a small book divided by four. */
  readonly thicknessMm: number | null;
  readonly thicknessU: number | null;
  readonly wrapsPerInch: number | null;
  readonly metresPer100g: number | null;
  readonly fibre: Fibre | null;
  /** 0 (lace) to 7 (jumbo). */
  readonly weightCategory: number | null;
  readonly stretch: Directions | null;
  readonly ribStretch: number | null;
  readonly growth: Directions | null;
  readonly massPerAreaGsm: number | null;
}
