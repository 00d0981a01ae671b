import type { BodyDimension, Figure } from '#body';
import type { Quantity } from '#measure';
import type { CheckName, DimensionName } from '../messages/advice.ts';
import type { Choices } from '../design/choices.ts';
import type { CheckCode, CheckCodes, CheckFinding } from '../messages/check-codes.ts';
import type { Cure } from '../messages/cure.ts';
import type { RemedyCodes, RemedyMessage } from '../messages/remedy-codes.ts';
import type { WishCode } from '../messages/wish-codes.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import type { InputValues } from '../model/inputs.ts';
import type { ValueOf } from '../model/path.ts';
import type { OpeningPlace } from '../design/design.ts';

/** What a check compares: it holds where need ≤ have. mm, or ratios. */
export interface Limits {
  readonly need: Quantity;
  readonly have: Quantity;
  /** The comparisons of which it is the scarcest, where there are several. */
  readonly alternatives?: readonly Alternative[];
}

/** One of several comparisons that a check is made of. */
export interface Alternative extends Limits {
  readonly name: string;
  /** What it has to spare. */
  readonly spare: Quantity;
}

/** A garment whose numbers are known, for what a check has to say of it. */
export interface KnownGarment {
  readonly choices: Choices;
  readonly garment: GarmentModel;
  readonly figure: Figure | null;
  readonly kappa: number;
  readonly values: InputValues;
  readonly v: ValueOf;
}

/** A check that was worked out and that does not hold, or hardly. */
export interface Situation extends KnownGarment {
  readonly limits: Limits;
  /** mm, or a ratio. */
  readonly margin: number;
  /** Which way of the ease makes the margin larger, if any does, and whether it is that of the garment that fits. */
  readonly ease: { readonly way: 'more' | 'less'; readonly ofGarment: boolean } | null;
  /** The measure that was not taken and that alone leaves it uncertain. */
  readonly uncertain: BodyDimension | null;
  /** Whether a remedy changes a field. */
  readonly offered: (field: keyof Change) => boolean;
  /** Whether a check before it is fine. */
  readonly isFine: (check: CheckName) => boolean;
  /** The margin of any check; NaN where it is not known or does not apply. */
  readonly marginOf: (check: CheckName) => number;
}

/** A number of the design that a remedy may change. mm */
export type Field =
  | 'easeMm'
  | 'easeChangeMm'
  | 'customLengthMm'
  | 'neckWidthMm'
  | 'frontNeckDepthMm'
  | 'backNeckDepthMm'
  | 'bandMm'
  | 'ribMm'
  | 'cuffWidthMm';

/** A change of the design: numbers in mm, and choices by name. */
export type Change = Readonly<Partial<Record<Field, number>>> & {
  readonly length?: 'custom';
  readonly hem?: Choices['hem'];
  readonly opening?: Exclude<OpeningPlace, 'none'>;
};

/** A change that makes a check hold, and how many others it spoils, of comfort or in their certainty. */
export interface FoundRemedy {
  readonly message: RemedyMessage;
  readonly change: Change;
  readonly spoilt: number;
}

/** The codes of remedies that say no more than by how much. */
export type PlainRemedy = {
  [Code in keyof RemedyCodes]: { byMm: number } extends RemedyCodes[Code] ? Code : never;
}[keyof RemedyCodes];

/** Searches for changes of the design that would make a check hold. Each method returns one remedy, or none. */
export interface RemedySearch extends KnownGarment {
  /** The least increase of a quantity, in steps of `step` mm up to `most`, set in a field of the design. */
  readonly more: (of: Quantity, field: Field, by: Steps, text: PlainRemedy, rest?: Change) => FoundRemedy[];
  /** The least decrease, in steps of 5 mm; two fifths are left (assumed). */
  readonly less: (of: Quantity, field: Field, text: PlainRemedy, rest?: Change) => FoundRemedy[];
  readonly moreEase: () => FoundRemedy[];
  /** A change of a choice. */
  readonly choice: (change: Change, message: RemedyMessage) => FoundRemedy[];
  /** A neck that was widened for the head, as it stands: with one of its sizes changed, the others would be widened anew. */
  readonly neckAsItStands: () => Change;
}

export interface Steps {
  readonly step: number;
  readonly most: number;
}

type DetailsOf<Finding> = Finding extends CheckFinding<infer Details> ? Details : never;
type CheckDetails = DetailsOf<CheckCodes[CheckCode]>;

/** One check of whether a garment goes on, stays on and can be made. */
export interface CheckRule {
  readonly check: CheckName;
  /** The dimension of the sheet it is about, and the two wishes that collide where it fails. */
  readonly dimension: DimensionName;
  readonly wishes: readonly [WishCode, WishCode];
  /**
   * The making adds its share of the garment's girth to the uncertainty, and its share of the stretch that a `stretch` asks for. The garment's
   * girth is what a check has; of a `girth-needed`, as a cuff that must not be too wide, what it needs.
   */
  readonly kind: 'girth' | 'girth-needed' | 'length' | 'stretch';
  /** A matter of comfort is poor where it is short, never fails, and limits no rounding. */
  readonly comfort: (choices: Choices) => boolean;
  /** The main fabric's stretch counts: where it was not measured, what is usual for the craft is taken, and the check says so. */
  readonly stretches: (choices: Choices) => boolean;
  /** Whether the design has what it compares; `need` is NaN where it is not known. */
  readonly applies: (choices: Choices, need: number) => boolean;
  readonly limits: (m: GarmentModel) => Limits;
  /** What it is about in this garment, if not always the same. */
  readonly code?: (limits: Limits, garment: KnownGarment) => CheckCode;
  /** Whether how much is missing or to spare says something. */
  readonly saysMargin: boolean;
  readonly details?: (at: Situation) => CheckDetails;
  /** What to do where it does not hold, or hardly; always something. What is kept from a garment that fits has no field of its own. */
  readonly cures: (at: Situation) => readonly Cure[];
  /** Said instead of the cures where a measure that was not taken is what leaves it uncertain. */
  readonly measureFirst?: Cure;
  /** Changes of the design that might make it hold. */
  readonly remedies?: (search: RemedySearch) => readonly FoundRemedy[];
}

export const always = (): boolean => true;
export const never = (): boolean => false;
export const hasSleeve = ({ silhouette }: Choices): boolean => silhouette !== 'vest';
export const isPulledOn = ({ silhouette }: Choices): boolean => silhouette !== 'cardigan';
export const isCloseFitting = ({ closeFitting }: Choices): boolean => closeFitting;

/** A check that has limits for a garment, and the margin that they leave. */
export interface TracedCheck extends Limits {
  readonly rule: CheckRule;
  readonly margin: Quantity;
}
