import type { BodyDimension, BodyProfile } from '#body';
import type { GarmentDimension } from '#garment';
import type { SheetInput, TargetSheet } from '#target-sheet';
import type { ValueQuestion } from './value-question.ts';

/** What the page shows of a notebook. `cannot` says why there is no sheet; null while simply too little is written. */
export interface Computation {
  readonly input: SheetInput;
  readonly profile: BodyProfile | null;
  readonly sheet: TargetSheet | null;
  readonly cannot: string | null;
}

/** What is said of the measure worth taking next. */
export type NextMeasureAdvice =
  /** What is written is not reckoned with yet, or cannot be. */
  | { readonly is: 'unknown' }
  /** Too little is written for a sheet. */
  | { readonly is: 'begin' }
  /** Nothing that was skipped would change much. */
  | { readonly is: 'done' }
  /** A measure, and what there is without it. */
  | { readonly is: 'take'; readonly name: BodyDimension; readonly without: 'nothing' | 'gaps' | 'guess' }
  /** A measure, and how sure the sheet is without it and with it, mm. */
  | { readonly is: 'surer'; readonly name: BodyDimension; readonly before: number; readonly after: number };

/** What is asked of her about a notebook. Nobody waits for it, so it is worked out when a part of the page comes to show it. */
export interface OpenQuestions {
  /** The measure that would help most. */
  readonly next: () => NextMeasureAdvice;
  /** What looks like a slip, of her body and of the sweater that fits. */
  readonly ofBody: () => Readonly<Partial<Record<BodyDimension, ValueQuestion<BodyDimension>>>>;
  readonly ofGarment: () => Readonly<Partial<Record<GarmentDimension, ValueQuestion<GarmentDimension>>>>;
}
