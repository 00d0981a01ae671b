import { errorsOf, type NoParams } from '#measure';
import type { Basis } from './design.ts';

/** Why a finished piece does not go with a design. */
export type MadeUnfit =
  | 'front-of-cardigan'
  | 'half-front'
  | 'sleeve-of-vest'
  | 'cap-without-set-in'
  | 'sleeve-raglan-without-raglan'
  | 'armhole-of-raglan'
  | 'raglan-without-raglan';

/** What can be wrong with what the advice is asked for, by code. */
export interface FitErrors {
  'rule-unknown': { readonly name: string };
  'rule-out-of-range':
    | {
        readonly name: string;
        readonly value: number;
        readonly min: number;
        readonly max: number;
        readonly unit: string;
      }
    /** Two rules that begin and end a band of ease. */
    | { readonly from: string; readonly to: string; readonly fromValue: number; readonly toValue: number };
  /** `name`: piece/dimension. */
  'made-unknown': { readonly name: string; readonly known: readonly string[] };
  'made-unfit': { readonly name: string; readonly why: MadeUnfit };
  'made-twice': { readonly name: string; readonly earlierMm: number };
  /** What needs a garment that fits. */
  'garment-missing': { readonly for: Exclude<Basis, 'body'> | 'ease' };
  'garment-length-missing': NoParams;
  'favourites-too-few': NoParams;
}

export const fitError = errorsOf<FitErrors>();
