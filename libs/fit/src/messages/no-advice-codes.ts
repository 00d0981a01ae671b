import type { BodyDimension, BodyMissing } from '#body';
import type { MessageOf, NoParams } from '#measure';

/** What would make a sleeve join its armhole. */
export type SleeveCure = 'narrower-sleeve-again' | 'narrower-sleeve-or-deeper-armhole-again' | 'squared-drop';

/** Why a number has no value. */
export interface NoAdviceCodes {
  /** `why`: why the body does not have the first of them of which that is known. */
  readonly measure: { readonly measures: readonly BodyDimension[]; readonly why: BodyMissing | null };
  readonly 'garment-measure-missing': NoParams;
  readonly 'no-shape-joins': NoParams;
  readonly 'nothing-left': NoParams;
  readonly 'no-sleeve': { readonly cure: SleeveCure };
}

export type NoAdviceMessage = MessageOf<NoAdviceCodes>;
