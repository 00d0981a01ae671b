import { errorsOf } from '#measure';
import type { Craft } from './fabric.ts';
import type { Stitch } from './stitch.ts';

/** What can be wrong with a fabric, by code. */
export interface FabricErrors {
  'fabric-out-of-range': {
    readonly value: number;
    readonly smallest: number;
    readonly largest: number;
    /** Null for a plain number. */
    readonly unit: 'mm' | 'm' | 'g/m²' | null;
  };
  'weight-category-unknown': { readonly category: number };
  'stitch-of-other-craft': { readonly stitch: Stitch; readonly craft: Craft };
  /** `fibreMissing`: the metres per 100 g are there, but not the fibre. */
  'thickness-unknown': { readonly fibreMissing: boolean };
}

export const fabricError = errorsOf<FabricErrors>();
