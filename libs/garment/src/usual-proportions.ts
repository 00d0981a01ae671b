import type { GarmentDimension } from './garment-dimension.ts';
import type { GarmentProfile } from './garment.ts';

/** A measure as a multiple of the garment's chest width: what is usual, and where it stops being believed. */
export interface Proportion {
  readonly least: number;
  readonly usual: number;
  readonly most: number;
}

/**
 * Assumed, from sweaters of all cuts, from a small child's to the largest adult's. Neck depths are not here: from a boat neck
 * to a deep V there is no usual one.
 */
const PROPORTIONS: Readonly<Partial<Record<GarmentDimension, Proportion>>> = {
  'chest-width': { least: 0.75, usual: 1, most: 1.4 },
  'hem-width': { least: 0.6, usual: 0.97, most: 1.6 },
  'shoulder-to-hem': { least: 0.5, usual: 1.15, most: 2.1 },
  'neck-width': { least: 0.18, usual: 0.34, most: 0.6 },
  'cross-back-width': { least: 0.45, usual: 0.78, most: 1.15 },
  'armhole-depth': { least: 0.26, usual: 0.43, most: 0.68 },
  'sleeve-top-width': { least: 0.2, usual: 0.38, most: 0.65 },
  'sleeve-length': { least: 0.15, usual: 0.9, most: 1.5 },
  'cuff-width': { least: 0.09, usual: 0.19, most: 0.33 },
};

/** The same when the sleeve was measured from the centre back (assumed). */
const SLEEVE_FROM_CENTRE_BACK: Proportion = { least: 0.5, usual: 1.45, most: 2 };

/** What is usual there, or undefined where nothing is. */
export function usualProportion(
  name: GarmentDimension,
  sleeveFrom: GarmentProfile['sleeveFrom'],
): Proportion | undefined {
  if (name === 'sleeve-length' && sleeveFrom === 'centre-back') return SLEEVE_FROM_CENTRE_BACK;
  return PROPORTIONS[name];
}
