import type { How } from '#measure';
import type { EaseCategory } from './ease-category.ts';
import type { GarmentDimension } from './garment-dimension.ts';
import type { Neckline } from './neckline.ts';

export const CONSTRUCTIONS = ['drop-shoulder', 'squared-drop', 'set-in', 'raglan'] as const;
export type Construction = (typeof CONSTRUCTIONS)[number];

export const LAYER_SLEEVES = ['none', 'short', 'long'] as const;
/** What is worn beneath, beyond a shirt: its thickness and how far its sleeves reach. */
export interface Layer {
  readonly thicknessMm: number;
  readonly u: number;
  readonly sleeves: (typeof LAYER_SLEEVES)[number];
}

export const WEARS = ['close', 'right', 'roomy'] as const;
export type Wears = (typeof WEARS)[number];
/** Where a maker can say how a garment wears. */
export const REGIONS = [
  'chest',
  'hip',
  'across-back',
  'armhole',
  'upper-arm',
  'sleeve',
  'cuff',
  'neck',
  'length',
] as const;
export type Region = (typeof REGIONS)[number];

/** How long the sleeves of a garment are. */
export const SLEEVES = ['long', 'three-quarter', 'elbow', 'short', 'cap'] as const;
export type SleeveLength = (typeof SLEEVES)[number];

/** A flat measurement in mm. `from` belongs to `sleeve-length` alone: measured from the shoulder seam or from the centre back. */
export interface GarmentMeasure {
  readonly name: GarmentDimension;
  readonly value: number;
  readonly how: How;
  readonly u?: number;
  readonly from?: 'seam' | 'centre-back';
  /** It was measured again, and is right, however unlikely it looks. */
  readonly confirmed?: boolean;
}

/** A garment that fits, as recorded. */
export interface Garment {
  /** What the maker calls it; empty where she did not say. */
  readonly title: string;
  readonly construction: Construction;
  readonly measures: readonly GarmentMeasure[];
  readonly thicknessMm: number;
  readonly thicknessU: number;
  /** What she wears beneath it when it fits. */
  readonly layer: Layer | null;
  /** True when it is worn stretched: the new one must then stretch as much. */
  readonly wornStretched: boolean;
  /** How closely it fits, where she said so. */
  readonly fits: EaseCategory | null;
  readonly neckline: Neckline | null;
  readonly sleeve: SleeveLength;
  /** How it wears, region by region, where she said so. */
  readonly wears: Readonly<Partial<Record<Region, Wears>>>;
}

/** A garment measurement with its standard uncertainty filled in. */
export interface GarmentValue {
  readonly value: number;
  readonly u: number;
  readonly how: How;
  readonly confirmed?: boolean;
}

/** A garment ready for the arithmetic of fit; one measure a dimension. */
export interface GarmentProfile extends Omit<Garment, 'measures'> {
  readonly values: Readonly<Partial<Record<GarmentDimension, GarmentValue>>>;
  readonly sleeveFrom: 'seam' | 'centre-back';
}
