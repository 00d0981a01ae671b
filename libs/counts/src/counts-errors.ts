import { errorsOf } from '#measure';
import type { CountedFabric } from './counts-request.ts';

/** What can be wrong with what a sheet is counted at, by code. */
export interface CountsErrors {
  /** Stitches or rows in 100 mm. */
  'gauge-out-of-range': {
    readonly of: 'stitches' | 'rows';
    readonly value: number;
    readonly smallest: number;
    readonly largest: number;
  };
  'multiple-unusable': { readonly multiple: number; readonly plus: number; readonly largest: number };
  /** The repeat is wider than the piece. */
  'multiple-larger-than-piece': {
    readonly fabric: CountedFabric;
    readonly multiple: number;
    readonly plus: number;
    readonly piece: string;
    readonly name: string;
    readonly stitches: number;
  };
  /** No whole counts meet all that is asked. */
  'counts-close-nowhere': { readonly piece: string; readonly name: string };
  'nothing-to-count': Record<never, never>;
}

export const countsError = errorsOf<CountsErrors>();
