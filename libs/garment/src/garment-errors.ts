import { errorsOf, type How } from '#measure';
import type { GarmentDimension } from './garment-dimension.ts';
import type { Construction } from './garment.ts';

/** A length that lies outside its limits. */
export interface OutsideLimits {
  readonly valueMm: number;
  readonly smallestMm: number;
  readonly largestMm: number;
}

/** What can be wrong with a garment, by code. */
export interface GarmentErrors {
  'unknown-construction': { readonly construction: string; readonly known: readonly Construction[] };
  'unknown-dimension': {
    readonly of: 'garment';
    readonly name: string;
    readonly known: readonly GarmentDimension[];
  };
  'unknown-how': { readonly name: string; readonly how: string; readonly known: readonly How[] };
  'measured-twice': { readonly name: string };
  'measure-out-of-range': OutsideLimits;
  'uncertainty-out-of-range': OutsideLimits;
  'thickness-out-of-range': OutsideLimits;
  'sleeve-from-misplaced': { readonly name: GarmentDimension };
}

export const garmentError = errorsOf<GarmentErrors>();
