import type { Figure } from '#body';
import type { Construction } from '#garment';
import type { Hem, LengthChoice, Neckline, Silhouette } from './design.ts';
import type { Tape } from './tape.ts';
import type { Rules } from './rules.ts';

/** Which dimensions are taken from the garment that fits. */
export interface TakenOver {
  readonly chest: boolean;
  readonly hem: boolean;
  readonly upperArm: boolean;
  readonly wrist: boolean;
  readonly acrossBack: boolean;
  readonly armhole: boolean;
  readonly length: boolean;
  readonly nape: boolean;
  readonly neckWidth: boolean;
  readonly frontNeck: boolean;
  readonly backNeck: boolean;
}

/** Which numbers come from pieces already made. */
export interface Made {
  readonly back: boolean;
  readonly front: boolean;
  readonly armhole: boolean;
  readonly sleeveTop: boolean;
  readonly cap: boolean;
  readonly sleeveRaglan: boolean;
  readonly cuff: boolean;
  readonly sleeve: boolean;
  readonly bodyToUnderarm: boolean;
  /** The front's own, where the back's was made too: they meet in a seam. */
  readonly frontArmhole: boolean;
  readonly frontToUnderarm: boolean;
  readonly neckWidth: boolean;
}

/** Everything of the model that is a choice and not a number: decided once, before anything is nudged. */
export interface Decisions {
  readonly silhouette: Silhouette;
  readonly construction: Construction;
  readonly neckline: Neckline;
  readonly hem: Hem;
  readonly rules: Rules;
  readonly tape: Tape;
  readonly figure: Figure | null;
  /** The rules at the wearer's size, and its κ. */
  readonly sized: Rules;
  readonly kappa: number;
  readonly easeFromGarment: boolean;
  readonly taken: TakenOver;
  readonly made: Made;
  readonly ownNeckWidth: boolean;
  readonly ownFrontNeck: boolean;
  readonly ownBackNeck: boolean;
  readonly length: LengthChoice;
  /** What a named length is said from: a man's hip (measured, or so far below his waist), else the waist. */
  readonly lengthFrom: 'waist' | 'hip' | 'hip below waist';
  readonly hipReached: boolean;
  /** The hip is wider than the chest and the hem straight: the hip governs the whole body. */
  readonly hipGoverns: boolean;
  /** How far the layer's sleeves reach, 0 or 1; the reference garment's likewise. */
  readonly layerArm: number;
  readonly layerWrist: number;
  readonly refLayerArm: number;
  readonly refLayerWrist: number;
  readonly refConstruction: Construction;
  readonly sleeveFromCentreBack: boolean;
  readonly refWidthGiven: boolean;
  readonly ribUsable: number;
  readonly mainUsable: number;
  readonly mainMeasured: boolean;
  /** The main fabric's stretch counts at arm, armhole and hip. */
  readonly closeFitting: boolean;
}

/** A sleeve that is set into a straight edge, with no cap of its own. */
export const isDropped = ({ construction }: Decisions): boolean =>
  construction === 'drop-shoulder' || construction === 'squared-drop';
