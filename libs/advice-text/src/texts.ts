import type {
  CautionCodes,
  CheckCodes,
  EaseCodes,
  NoAdviceCodes,
  NoteCodes,
  RemedyCodes,
  SourceCodes,
  TermCodes,
  WishCodes,
} from '#fit';
import type { Catalogue } from './catalogue.ts';

/** The codes of each kind of sentence. */
export interface TextCodes {
  readonly term: TermCodes;
  readonly source: SourceCodes;
  readonly noAdvice: NoAdviceCodes;
  readonly check: CheckCodes;
  readonly remedy: RemedyCodes;
  readonly wish: WishCodes;
  readonly ease: EaseCodes;
  readonly note: NoteCodes;
  readonly caution: CautionCodes;
}

/** Everything that is said in one language. */
export type Texts = { readonly [Kind in keyof TextCodes]: Catalogue<TextCodes[Kind]> };
