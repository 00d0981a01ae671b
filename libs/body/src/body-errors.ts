import { errorsOf, type How } from '#measure';
import type { BodyDimension } from './body-dimension.ts';
import type { Figure } from './body.ts';

/** What can be wrong with a body or a size table, by code. Values are in mm, of the weight in g. */
export interface BodyErrors {
  'unknown-figure': { readonly figure: string; readonly known: readonly Figure[] };
  'age-out-of-range': {
    readonly figure: Figure;
    readonly ageYears: number;
    readonly youngest: number;
    readonly oldest: number;
  };
  'unknown-dimension': {
    readonly of: 'body' | 'body-model';
    readonly name: string;
    readonly known: readonly BodyDimension[];
  };
  /** An observation rests on something of which nothing is known: neither a dimension nor a hidden number of its own. */
  'unknown-term': { readonly name: string; readonly known: readonly string[] };
  'unknown-how': { readonly name: string; readonly how: string; readonly known: readonly How[] };
  'measured-twice': { readonly name: string };
  'measure-out-of-range': {
    readonly name: BodyDimension;
    readonly figure: Figure;
    readonly value: number;
    readonly smallest: number;
    readonly largest: number;
    readonly unit: 'mm' | 'g';
  };
  'uncertainty-out-of-range': {
    readonly name: BodyDimension;
    readonly u: number;
    readonly value: number;
    readonly unit: 'mm' | 'g';
  };
  'not-a-measure': { readonly name: BodyDimension; readonly value: number; readonly u: number };
  'singular-covariance': Record<never, never>;
  'unknown-size-table': { readonly id: string; readonly known: readonly string[] };
  'unknown-size': { readonly table: string; readonly size: string; readonly known: readonly string[] };
}

export const bodyError = errorsOf<BodyErrors>();
