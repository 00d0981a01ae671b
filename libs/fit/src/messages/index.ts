export type { CheckCode, CheckCodes, CheckFinding, CheckMessage, CheckTrouble, SeamEdges } from './check-codes.ts';
export type { Closing, Cure } from './cure.ts';
export type { EaseCodes, EasePlace } from './ease-codes.ts';
export type { NoAdviceCodes, NoAdviceMessage } from './no-advice-codes.ts';
export type { CautionCodes, CautionMessage, NoteCodes, NoteMessage } from './note-codes.ts';
export type { RemedyCodes, RemedyMessage } from './remedy-codes.ts';
export type { Source, SourceCodes } from './source-codes.ts';
export type { Term, TermCodes } from './term-codes.ts';
export type { WishCode, WishCodes } from './wish-codes.ts';
