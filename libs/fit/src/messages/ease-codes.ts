import type { MessageOf } from '#measure';
import type { EaseCategory } from '../design/design.ts';

/** Where an ease lies among the bands. */
export interface EaseCodes {
  readonly within: { readonly category: EaseCategory };
  readonly between: { readonly closer: EaseCategory; readonly looser: EaseCategory };
  readonly 'closer-than': { readonly category: EaseCategory };
}

export type EasePlace = MessageOf<EaseCodes>;
