import type { Construction, GarmentDimension, GarmentValue, Layer, Wears } from '#garment';
import type { EaseCategory } from '../design/design.ts';

/** Where a maker can say how a sweater wears. */
export type SweaterRegion =
  'chest' | 'hip' | 'across-back' | 'armhole' | 'upper-arm' | 'sleeve' | 'cuff' | 'neck' | 'length';

/** A sweater that fits, as what it tells of its wearer. mm */
export interface Sweater {
  /** Names its observations and its hidden ease. */
  readonly name: string;
  readonly construction: Construction;
  readonly values: Readonly<Partial<Record<GarmentDimension, GarmentValue>>>;
  readonly sleeveFrom: 'seam' | 'centre-back';
  /** Only a long sleeve tells of the arm's length. */
  readonly longSleeve: boolean;
  readonly thicknessMm: number;
  /** What is worn beneath it. */
  readonly layer: Layer | null;
  /** How it fits, where that was said. */
  readonly fits: EaseCategory | null;
  /** Whether its neckline is said to be a crew: of no other does the width tell anything. */
  readonly crew: boolean;
  readonly wears: Readonly<Partial<Record<SweaterRegion, Wears>>>;
}

/** What the body is taken to be while its sweaters are read, mm; null where nothing is known. */
export interface WearerSoFar {
  /** 1 for an adult; a child's girth against an adult's. */
  readonly scale: number;
  readonly backWaist: number | null;
  readonly neckBase: number | null;
}
