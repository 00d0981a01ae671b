import type { BodyDimension } from '#body';
import type { MessageOf, NoParams } from '#measure';

/** What would make a sleeve join its armhole. */
export type SleeveCure = 'narrower-sleeve-again' | 'narrower-sleeve-or-deeper-armhole-again' | 'squared-drop';

/** Why a number has no value. */
export interface NoAdviceCodes {
  /** `why`: why the body does not have it, in the words of the part that resolved it. */
  readonly measure: { readonly measures: readonly BodyDimension[]; readonly why: string | null };
  readonly 'garment-measure-missing': NoParams;
  readonly 'no-shape-joins': NoParams;
  readonly 'nothing-left': NoParams;
  readonly 'no-sleeve': { readonly cure: SleeveCure };
}

export type NoAdviceMessage = MessageOf<NoAdviceCodes>;
