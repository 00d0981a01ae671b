import type { BodyDimension } from '#body';
import type {
  AdvisedDesign,
  AssembledDimension as AdvisedAssembled,
  Check as AdvisedCheck,
  Collision as AdvisedCollision,
  Piece as AdvisedPiece,
  PieceDimension as AdvisedOnPiece,
} from '#fit';
import type { Params } from '#measure';

/** What a text of a sheet says, as a stable code and the values in it; absent in sheets made before texts had codes. */
export interface Coded {
  readonly code?: string;
  readonly params?: Params;
}

/** One reason of a value, in words; `from` is where it is from. */
export interface Term extends Coded {
  readonly term: string;
  readonly value: number;
  readonly u: number;
  readonly from: string;
  readonly fromCode?: string;
  readonly fromParams?: Params;
}

/** Why there is no value, in words, and the measures that would give one. */
export interface NoAdvice extends Coded {
  readonly needs: readonly BodyDimension[];
  readonly reason: string;
}

interface InWords {
  readonly because: readonly Term[];
  readonly noAdvice?: NoAdvice;
}

export type AssembledDimension = Omit<AdvisedAssembled, keyof InWords> & InWords;
export type PieceDimension = Omit<AdvisedOnPiece, keyof InWords> & InWords;
export type Piece = Omit<AdvisedPiece, 'dimensions'> & { readonly dimensions: readonly PieceDimension[] };

/** A change of the design that would make a check hold, in words and ready to apply. */
export interface Remedy extends Coded {
  readonly text: string;
  readonly change: Readonly<Record<string, number | string>>;
}

/** A check, with what to change in words. */
export interface Check extends Coded, Pick<AdvisedCheck, 'check' | 'comfort' | 'verdict' | CheckNumber> {
  /** Of its numbers: that of the sheet, or 1 for a ratio. */
  readonly unit: 'mm' | 'cm' | 'in' | '1';
  readonly advice: string;
  readonly needs?: readonly BodyDimension[];
  readonly remedies?: readonly Remedy[];
}
type CheckNumber = 'need' | 'have' | 'margin' | 'u' | 'chanceOfFailing';

/** A wish in words. */
export type Wish = Coded & { readonly text: string };

export interface Collision extends Pick<AdvisedCollision, 'piece' | 'dimension'> {
  readonly wishes: readonly [Wish, Wish];
}

/** Something to say on the sheet: in words, and where it is from. */
export interface SheetNote {
  readonly code: string;
  readonly params?: Params;
  readonly text: string;
  readonly source?: string;
}

/** The design as advised; where its ease lies among the bands, in words. */
export type SheetDesign = Omit<AdvisedDesign, 'ease'> & {
  readonly ease: Omit<AdvisedDesign['ease'], 'lies'> & {
    readonly lies: string | null;
    readonly liesCode?: string;
    readonly liesParams?: Params;
  };
};
