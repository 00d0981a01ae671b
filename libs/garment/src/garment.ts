import type { How } from '#measure';
import type { GarmentDimension } from './garment-dimension.ts';

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
export const REGIONS = ['chest', 'hip', 'upper-arm', 'length', 'sleeve'] as const;
export type Region = (typeof REGIONS)[number];

/** A flat measurement in mm. `from` belongs to `sleeve-length` alone: measured from the shoulder seam or from the centre back. */
export interface GarmentMeasure {
  readonly name: GarmentDimension;
  readonly value: number;
  readonly how: How;
  readonly u?: number;
  readonly from?: 'seam' | 'centre-back';
}

/** The favourite garment as recorded. */
export interface Garment {
  readonly construction: Construction;
  readonly measures: readonly GarmentMeasure[];
  readonly thicknessMm: number;
  readonly thicknessU: number;
  /** What she wears beneath it when it fits. */
  readonly layer: Layer | null;
  /** True when it is worn stretched: the new one must then stretch as much. */
  readonly wornStretched: boolean;
  /** How it wears, region by region, where she said so. */
  readonly wears: Readonly<Partial<Record<Region, Wears>>>;
}

/** A garment measurement with its standard uncertainty filled in. */
export interface GarmentValue {
  readonly value: number;
  readonly u: number;
  readonly how: How;
}

/** A garment ready for the arithmetic of fit; one measure a dimension. */
export interface GarmentProfile {
  readonly construction: Construction;
  readonly values: Readonly<Partial<Record<GarmentDimension, GarmentValue>>>;
  readonly sleeveFrom: 'seam' | 'centre-back';
  readonly thicknessMm: number;
  readonly thicknessU: number;
  readonly layer: Layer | null;
  readonly wornStretched: boolean;
  readonly wears: Garment['wears'];
}
