import type { BodyDimension, BodyMissingCodes, BodyNoteCodes, BodyQuestionCodes } from '#body';
import type { FabricNoteCodes } from '#fabric';
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
import type { GarmentQuestionCodes } from '#garment';
import type { NoParams } from '#measure';
import type { Catalogue } from './catalogue.ts';
import type { ErrorCodes } from './error-codes.ts';
import type { MissingCodes, PlannerWarningCodes } from './planner-codes.ts';
import type { PrintedCodes } from './printed-codes.ts';

/** The codes of each kind of sentence. */
export interface TextCodes {
  readonly error: ErrorCodes;
  readonly howToMeasure: { readonly [Name in BodyDimension]: NoParams };
  readonly bodyQuestion: BodyQuestionCodes;
  readonly bodyNote: BodyNoteCodes;
  readonly bodyMissing: BodyMissingCodes;
  readonly garmentQuestion: GarmentQuestionCodes;
  readonly fabricNote: FabricNoteCodes;
  readonly term: TermCodes;
  readonly source: SourceCodes;
  readonly noAdvice: NoAdviceCodes;
  readonly check: CheckCodes;
  readonly remedy: RemedyCodes;
  readonly wish: WishCodes;
  readonly ease: EaseCodes;
  readonly note: NoteCodes;
  readonly caution: CautionCodes;
  readonly missing: MissingCodes;
  readonly plannerWarning: PlannerWarningCodes;
  readonly printed: PrintedCodes;
}

/** Everything that is said in one language. */
export type Texts = { readonly [Kind in keyof TextCodes]: Catalogue<TextCodes[Kind]> };
