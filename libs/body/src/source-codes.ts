import type { CommonSourceCodes, MessageOf, NoParams } from '#measure';
import type { BodyDimension } from './body-dimension.ts';
import type { Mark } from './sizes/mark.ts';

/** Where a value of a body, or what is said of it, is from, by code. */
export interface BodySourceCodes extends CommonSourceCodes {
  /** A row of a published size table, by its label, and how sure its values are. */
  readonly 'size-row': { readonly row: string; readonly mark: Mark | null };
  /** The body model, from what was known. */
  readonly 'body-model': { readonly known: readonly BodyDimension[]; readonly version: number };
  /** What was measured of the body, and the sources of further evidence, by their names. */
  readonly evidence: {
    readonly known: readonly BodyDimension[];
    readonly sources: readonly string[];
    readonly version: number;
  };
  /** `constantMm` and so many times another dimension. */
  readonly formula: { readonly constantMm: number; readonly times: number; readonly of: BodyDimension };
  readonly 'nape-to-cuff-from-arm': NoParams;
  /** 0.55 × (upper arm + wrist). */
  readonly 'forearm-from-arm': NoParams;
  readonly 'wrist-from-age': { readonly ageYears: number };
  readonly 'head-from-age': { readonly ageYears: number };
  /** The surveys that the body model was made from. */
  readonly surveys: NoParams;
}

export type BodySource = MessageOf<BodySourceCodes>;
