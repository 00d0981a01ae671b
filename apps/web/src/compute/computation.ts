import type { BodyDimension, BodyProfile } from '#body';
import type { GarmentDimension } from '#garment';
import type { Favourites, ResolvedWearer } from '#fit';
import type { SheetInput, TargetSheet } from '#target-sheet';
import type { ValueQuestion } from './value-question.ts';

/** What the page computes from a notebook. `cannot` says why there is no sheet; it is null while too little is entered. */
export interface Computation {
  readonly input: SheetInput;
  /** Null where the input cannot be read. */
  readonly wearer: ResolvedWearer | null;
  /** The wearer's body; null while nothing is known of it. */
  readonly profile: BodyProfile | null;
  /** The ease of the sweaters that she likes, from two on. */
  readonly favourites: Favourites | null;
  readonly sheet: TargetSheet | null;
  readonly cannot: string | null;
}

/** Advice on the measurement to take next. */
export type NextMeasureAdvice =
  /** Not computed yet, or not computable. */
  | { readonly is: 'unknown' }
  /** Too little is entered for a sheet. */
  | { readonly is: 'begin' }
  /** No missing measurement would change much. */
  | { readonly is: 'done' }
  /** A measurement, and what the page has without it. */
  | { readonly is: 'take'; readonly name: BodyDimension; readonly without: 'nothing' | 'gaps' | 'guess' }
  /** A measurement, and the uncertainty of the sheet before and after it, mm. */
  | { readonly is: 'surer'; readonly name: BodyDimension; readonly before: number; readonly after: number };

/** The questions about a notebook. They are not urgent, so each is a function that the component calls when it renders. */
export interface OpenQuestions {
  /** The measurement that would reduce the uncertainty most. */
  readonly next: () => NextMeasureAdvice;
  /** Probable slips in the measurements of the body and of the sweater that fits. */
  readonly ofBody: () => Readonly<Partial<Record<BodyDimension, ValueQuestion<BodyDimension>>>>;
  readonly ofGarment: () => Readonly<Partial<Record<GarmentDimension, ValueQuestion<GarmentDimension>>>>;
}
