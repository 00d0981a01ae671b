import type { BodyDimension } from '#body';
import type { Construction, GarmentDimension } from '#garment';
import type { MessageOf, NoParams } from '#measure';
import type { PieceName } from '../design/piece-name.ts';
import type { RuleName } from '../design/rules.ts';
import type { EaseCategory, LengthChoice } from '../design/design.ts';

/** What an input of the model is. */
export interface InputCodes {
  readonly 'body-measure': { readonly dimension: BodyDimension };
  readonly 'garment-measure': { readonly dimension: GarmentDimension };
  readonly 'garment-fabric': NoParams;
  readonly 'garment-layer': NoParams;
  /** The ease that the garment that fits has on its wearer. */
  readonly 'garment-ease': { readonly title: string };
  /** What its back neck, which was not measured, is deeper than its wearer's. */
  readonly 'garment-back-neck': NoParams;
  readonly fabric: NoParams;
  readonly 'ordinary-fabric': NoParams;
  readonly layer: NoParams;
  readonly ease: { readonly category: EaseCategory | null };
  readonly 'ease-change': NoParams;
  readonly 'hip-ease': NoParams;
  /** What a region has less that wears close. */
  readonly 'region-ease': NoParams;
  readonly 'wrist-room': NoParams;
  readonly 'armhole-room': NoParams;
  /** How much deeper than a set-in armhole a construction's is; the design's, or that of the garment that fits. */
  readonly 'construction-depth': { readonly construction: Construction; readonly ofGarment: boolean };
  readonly 'named-length': { readonly length: LengthChoice };
  readonly 'own-length': NoParams;
  readonly 'hip-below-waist': NoParams;
  readonly 'left-for-shoulders': NoParams;
  readonly 'neck-room': { readonly scoop: boolean };
  readonly 'scoop-depth': NoParams;
  readonly 'boat-depth': NoParams;
  readonly 'own-neck-width': NoParams;
  readonly 'own-front-neck-depth': NoParams;
  readonly 'own-back-neck-depth': NoParams;
  readonly 'squared-inset-most': NoParams;
  readonly 'set-in-inset-least': NoParams;
  readonly 'armhole-curve-most': NoParams;
  readonly 'band-depth': NoParams;
  readonly 'front-band': NoParams;
  readonly 'band-overlap': NoParams;
  readonly 'rib-depth': NoParams;
  readonly 'own-cuff': NoParams;
  readonly 'own-opening': NoParams;
  /** A length that a rule gives or limits. */
  readonly 'rule-length': { readonly rule: RuleName };
  /** What a fabric that hardly gives takes off the room of a girth. */
  readonly 'stiff-fabric': { readonly dimension: BodyDimension };
  /** The uncertainty of a measure that something is made larger for. */
  readonly 'uncertainty-of': { readonly dimension: BodyDimension };
  readonly 'made-piece': { readonly piece: PieceName };
  /** The whole front that a finished half is half of. */
  readonly 'made-half-front': { readonly piece: PieceName };
}

export type InputTerm = MessageOf<InputCodes>;

/** Of a number that is solved for and not added up: what it is. */
interface SolvedCodes {
  readonly 'finished-neck-edge': NoParams;
  readonly 'piece-neck-edge': NoParams;
  readonly 'opening-for-head': NoParams;
  readonly 'deepened-for-arm': NoParams;
  readonly 'solved-from-seam': NoParams;
  readonly 'sleeve-below-seam': NoParams;
  readonly 'solved-from-made-sleeve': NoParams;
  readonly 'length-less-armhole-of-made-sleeve': NoParams;
  readonly 'made-body-and-armhole-of-made-sleeve': NoParams;
  readonly 'from-v-point': NoParams;
  readonly 'left-by-widened-neck': NoParams;
  readonly 'kept-to-shoulders': NoParams;
  readonly 'widened-for-head': NoParams;
  readonly 'widened-beside-opening': NoParams;
}

/** One reason of a value. `share`: how often the input enters, negative where it takes away, to three decimals. */
export type TermCodes = {
  readonly [Code in keyof InputCodes]: InputCodes[Code] & { readonly share: number };
} & SolvedCodes & {
    /** How the fabric's thickness compares with an ordinary one's; `apart` where they enter by different shares. */
    readonly 'fabric-beside-ordinary': { readonly compared: 'thinner' | 'alike' | 'thicker' | 'apart' };
    /** What a limit of the model takes away or adds. */
    readonly limit: NoParams;
  };

export type Term = MessageOf<TermCodes>;
export type SolvedCode = keyof SolvedCodes;
