import type { GarmentDimension } from './garment-dimension.ts';

/** The smallest and the largest a garment may be there, mm. */
export type Limits = readonly [smallest: number, largest: number];

/**
 * What is believed of a garment laid flat (assumed): from a newborn's to the largest tunic, and wide enough that a girth for
 * a width, or inches for centimetres, still comes in, so that the maker can be asked about it.
 */
export const GARMENT_LIMITS: Readonly<Record<GarmentDimension, Limits>> = {
  'chest-width': [60, 3000],
  'hem-width': [60, 3500],
  'shoulder-to-hem': [60, 3500],
  'back-neck-depth': [0, 300],
  'front-neck-depth': [0, 1200],
  'neck-width': [20, 1200],
  'cross-back-width': [50, 2500],
  'armhole-depth': [25, 1200],
  'sleeve-top-width': [20, 1500],
  'sleeve-length': [15, 2500],
  'cuff-width': [10, 900],
};

/** Fabric of a garment, and of what is worn beneath it, mm. */
export const THICKNESS_LIMITS: Limits = [0.2, 40];
export const LAYER_LIMITS: Limits = [0, 40];
/** An uncertainty larger than this says nothing, mm (assumed). */
export const THICKNESS_U_LIMITS: Limits = [0, 20];
export const MEASURE_U_LIMITS: Limits = [0, 500];
