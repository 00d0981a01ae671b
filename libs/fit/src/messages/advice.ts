import type { BodyDimension } from '#body';
import type { Construction } from '#garment';
import type { Basis, EaseCategory, LengthChoice, Neckline, OpeningPlace, Silhouette } from '../design/design.ts';
import type { CheckMessage } from './check-codes.ts';
import type { DimensionName } from './dimension-name.ts';
import type { EasePlace } from './ease-codes.ts';
import type { Edge } from './edge.ts';
import type { Identity } from './identity.ts';
import type { NoAdviceMessage } from './no-advice-codes.ts';
import type { CautionMessage, NoteMessage } from './note-codes.ts';
import type { Region } from './region.ts';
import type { RemedyMessage } from './remedy-codes.ts';
import type { Source } from './source-codes.ts';
import type { Term } from './term-codes.ts';
import type { WishCode } from './wish-codes.ts';
import type { CheckName } from '../design/check-name.ts';
import type { PieceName } from '../design/piece-name.ts';

export { CHECKS, type CheckName } from '../design/check-name.ts';
export { PIECES, type PieceName } from '../design/piece-name.ts';
export * from './dimension-name.ts';
export * from './edge.ts';
export type * from './identity.ts';
export * from './region.ts';

/** One reason of a value. The terms of a dimension add up to its value; u is the term's own standard uncertainty. mm. */
export type Because = Term & {
  readonly value: number;
  readonly u: number;
  readonly from: Source;
};

/** Why there is no value, and the measures that would give one. */
export type NoAdvice = NoAdviceMessage & { readonly needs: readonly BodyDimension[] };

/** A dimension that moves with another that is rounded: where it stands, and how far, mm a mm. */
export interface Follows {
  readonly piece: PieceName | 'assembled';
  readonly name: DimensionName;
  readonly slope: number;
}

/** What every dimension carries, assembled or on a piece. `low ≤ value ≤ high`: how far a planner may round. mm. */
interface DimensionCore {
  readonly name: DimensionName;
  readonly value: number | null;
  readonly u?: number;
  readonly low?: number;
  readonly high?: number;
  /** What moves with it when it is rounded. */
  readonly follows?: readonly Follows[];
  readonly because: readonly Because[];
  readonly noAdvice?: NoAdvice;
}

export type AssembledDimension = DimensionCore;

/** On a piece: made by stitches (`across`) or rows (`along`), in the main fabric or in rib. `asMade` is off the needles, unwashed. */
export interface PieceDimension extends DimensionCore {
  readonly axis: 'across' | 'along';
  readonly fabric: 'main' | 'rib';
  /** A planner rounds it by itself; one that is not so follows by an identity of its piece, or is `derived`. */
  readonly defining: boolean;
  /** It is worked out from the shape, as the length of an edge. */
  readonly derived?: true;
  readonly allowance: number;
  readonly asMade: number | null;
}

/** A piece to make; `mirrored` of its copies are mirror images. `outline` as worn, without allowance: closed (last point joins the first), counter-clockwise, y up, origin at the left end of the lower edge; mm. */
export interface Piece {
  readonly piece: PieceName;
  readonly make: number;
  readonly mirrored: number;
  readonly workedFrom: 'hem' | 'cuff' | 'edge';
  readonly outline?: readonly (readonly [number, number])[];
  /** Once round the outline, from its first point on; none without an outline. */
  readonly edges: readonly Edge[];
  /** From where work begins to its end; none without an outline. */
  readonly regions: readonly Region[];
  readonly dimensions: readonly PieceDimension[];
  /** How the dimensions that define nothing follow from those that do. */
  readonly identities: readonly Identity[];
}

export const VERDICTS = ['fine', 'tight', 'fails', 'poor', 'unknown', 'n/a'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** need ≤ have, in mm (ratios for `sleeve-taper`, `raglan-slope` and `negative-ease`); absent where unknown or not applicable. */
export type Check = CheckMessage & {
  readonly check: CheckName;
  /** A matter of comfort: it never fails, but may be `poor`. */
  readonly comfort: boolean;
  readonly verdict: Verdict;
  readonly need?: number;
  readonly have?: number;
  readonly margin?: number;
  readonly u?: number;
  readonly chanceOfFailing?: number;
  readonly needs?: readonly BodyDimension[];
  readonly remedies?: readonly Remedy[];
};

/** A change of the design that would make a check hold, ready to apply: a design field and its new value in mm or by name. */
export type Remedy = RemedyMessage & { readonly change: Readonly<Record<string, number | string>> };

/** Two wishes that cannot both be had, at a dimension. */
export interface Collision {
  readonly wishes: readonly [WishCode, WishCode];
  readonly piece: PieceName | 'assembled';
  readonly dimension: DimensionName;
}

/** Where the work can hurt someone. */
export type Caution = CautionMessage & { readonly source: Source };

/** What else to know of the sheet as a whole. */
export type AdviceNote = NoteMessage & { readonly source?: Source };

/** What the design came to, in the terms of the sheet. */
export interface AdvisedDesign {
  readonly silhouette: Silhouette;
  readonly construction: Construction;
  readonly length: LengthChoice;
  readonly neckline: Neckline;
  readonly basis: Basis;
  /** Where the neck opens, and how far, mm; 0 for none. */
  readonly opening: { readonly at: OpeningPlace; readonly length: number };
  readonly ease: {
    readonly category: EaseCategory | null;
    readonly place: number | null;
    /** E, mm; null when the basis is a garment and no body is known. */
    readonly chosen: number | null;
    /** Eₜ of the garment as advised, in the table's terms, and where it lies; null without a chest. */
    readonly tableTerms: number | null;
    readonly lies: EasePlace | null;
    /** Flat ease F − B, room R, mm. */
    readonly flat: number | null;
    readonly room: number | null;
    /** Chance that the finished Eₜ lies in the chosen band; null for a bare number. */
    readonly chanceOfBand: number | null;
  };
}

/** Everything the fit module says, as codes and numbers; the target sheet is made of it. */
export interface Advice {
  readonly design: AdvisedDesign;
  readonly assembled: readonly AssembledDimension[];
  readonly pieces: readonly Piece[];
  readonly checks: readonly Check[];
  readonly collisions: readonly Collision[];
  readonly cautions: readonly Caution[];
  readonly notes: readonly AdviceNote[];
}

/** A finished piece as measured: flat, washed, no allowance. mm. */
export interface MadePiece {
  readonly piece: PieceName;
  readonly name: DimensionName;
  readonly value: number;
}
