import type { MessageOf, NoParams } from '#measure';
import type { BodyDimension } from './body-dimension.ts';
import type { Figure } from './body.ts';
import type { BodySource } from './source-codes.ts';
import type { BodyQuestion } from './model/question-codes.ts';

/** What was looked up in a size table. */
type LookedUp = { readonly by: 'chest'; readonly chestMm: number } | { readonly by: 'age'; readonly ageYears: number };

/** A size of a table, with the chests it is for where it was looked up by chest. */
type Size = {
  readonly size: string;
  readonly chestMm: { readonly lowMm: number; readonly highMm: number } | null;
};

/** Where in a table a body was found; `table` is its label. */
type Found = {
  readonly lookedUp: LookedUp;
  readonly table: string;
};

/** What there is to know about a body's values, by code. */
export interface BodyNoteCodes {
  /** Which measures were filled in instead, and from what. */
  readonly 'not-measured': { readonly names: readonly BodyDimension[]; readonly from: BodySource };
  /** Values that contradict one another. */
  readonly 'measure-doubtful': { readonly question: BodyQuestion };
  /** Whom the body model was made from, ages in years. */
  readonly 'body-model-made-from': { readonly youngest: number; readonly oldest: number };
  /** The body is older than anybody the model was made from. */
  readonly 'body-model-age': { readonly oldest: number };
  /** Nobody whom the named estimates come from is as large, as small or as young. */
  readonly 'body-model-size': { readonly names: readonly BodyDimension[] };
  readonly 'no-size-table': NoParams;
  readonly 'size-row': Found & { readonly size: Size };
  readonly 'between-sizes': Found & { readonly smaller: Size; readonly larger: Size; readonly read: string };
  /** `read`: whether the size at that end was read all the same. */
  readonly 'beyond-sizes': Found & {
    readonly end: Size;
    readonly side: 'below' | 'above';
    readonly read: boolean;
    readonly figure: Exclude<Figure, 'unsaid'>;
  };
  readonly 'age-assumed': { readonly ageYears: number };
  /** `armMeasured`, or the table's own nape to cuff is too long for its arm. */
  readonly 'nape-to-cuff-from-arm': { readonly armMeasured: boolean };
}

/** Something to know, and what it rests on. */
export type BodyNote = MessageOf<BodyNoteCodes> & { readonly source?: BodySource };
