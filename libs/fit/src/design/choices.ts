import type { Construction, Region } from '#garment';
import type { Craft } from '#fabric';
import type { Hem, LengthChoice, Neckline, OpeningPlace, Silhouette } from './design.ts';
import { type RuleName, RULES, type Rules } from './rules.ts';

/** Which dimensions are kept from the garment that fits. */
export interface KeptFromGarment {
  readonly chest: boolean;
  readonly hem: boolean;
  readonly upperArm: boolean;
  readonly wrist: boolean;
  readonly acrossBack: boolean;
  readonly armhole: boolean;
  readonly length: boolean;
  /** Its back neck was measured: its length is known from the back neck down. */
  readonly fromBackNeck: boolean;
  readonly napeToCuff: boolean;
  readonly neckWidth: boolean;
  readonly frontNeck: boolean;
  readonly backNeck: boolean;
}

/** Which measures of pieces already made are given. */
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
  /** The front's own, where the back's is given too: the two meet in a seam. */
  readonly frontArmhole: boolean;
  readonly frontToUnderarm: boolean;
  readonly neckWidth: boolean;
}

/** Regions of a garment that fits whose ease goes into the new one. */
export type ShiftedRegion = Exclude<Region, 'sleeve' | 'neck' | 'length'>;

/** How far the sleeves of a layer reach: 1 where they cover the place, else 0. */
export interface Reach {
  readonly arm: 0 | 1;
  readonly wrist: 0 | 1;
}

/**
 * How a neck opens. `asked` is where the maker wants it (null leaves it to the head), `ownLength` whether she gave its length. `at` is where it
 * does open, and `how` far: `own`, as she gave; `whole`, all of its place, since her own is longer; `asked`, as far as needed within its
 * place's limit; `needed`, as far as needed.
 */
export interface OpeningChoice {
  readonly asked: OpeningPlace | null;
  readonly ownLength: boolean;
  readonly at: OpeningPlace;
  readonly how: 'own' | 'whole' | 'asked' | 'needed';
}

/** All that the model's formulas depend on and that is not a number of it: one model is traced for each. */
export interface Choices {
  readonly silhouette: Silhouette;
  readonly construction: Construction;
  readonly neckline: Neckline;
  readonly hem: Hem;
  /** The maker said nothing of the hem: it may taper. */
  readonly hemIsFree: boolean;
  readonly length: LengthChoice;
  /** What a named length counts from: a man's hip (measured, or so far below his waist), else the waist. */
  readonly lengthFrom: 'waist' | 'hip' | 'hip-below-waist';
  /** Whether the body comes down to the hip. */
  readonly hipReached: boolean;
  /** Whether the fit is so close that the fabric's stretch counts at arm, armhole and hip. */
  readonly closeFitting: boolean;
  /** E is that of the garment that fits, with a change. */
  readonly easeFromGarment: boolean;
  /** By which regions the garment that fits has less ease (−1) or more (1) than as a whole. */
  readonly regionShift: Readonly<Record<ShiftedRegion, -1 | 0 | 1>>;
  readonly kept: KeptFromGarment;
  readonly made: Made;
  readonly craft: Craft;
  /** Whether the main fabric was pulled and gives less than an ordinary one. */
  readonly stiff: boolean;
  readonly opening: OpeningChoice;
  /** What a neck is made larger by: as much as the head needs, nothing, or as much as one that opens. */
  readonly neckScale: 'for-head' | 'as-is' | 'opened';
  /** How much the way under the arm counts beside the way along the top, in a sleeve that has both. */
  readonly underarmShare: number;
  readonly own: { readonly band: boolean; readonly rib: boolean; readonly cuff: boolean };
  /** The neck has no band: its own depth is nothing. */
  readonly bandless: boolean;
  readonly ownNeck: { readonly width: boolean; readonly front: boolean; readonly back: boolean };
  readonly layer: Reach;
  readonly refLayer: Reach;
  readonly ref: {
    readonly construction: Construction;
    readonly sleeveFromCentreBack: boolean;
    readonly widthGiven: boolean;
  };
  /** Usable stretch, as a share: of the rib, and of the main fabric across, measured or what is usual. */
  readonly usable: { readonly rib: number; readonly main: number; readonly mainMeasured: boolean };
  readonly rules: Rules;
}

const KEYS = new WeakMap<Rules, string>();

/** The rules' part of a key: those that a maker overrides. Made once for each table. */
function rulesKey(rules: Rules): string {
  const before = KEYS.get(rules);
  if (before !== undefined) return before;
  const key = JSON.stringify(
    RULES.filter(({ name, value }) => rules[name as RuleName] !== value).map(({ name }) => [
      name,
      rules[name as RuleName],
    ]),
  );
  KEYS.set(rules, key);
  return key;
}

/** Choices with the same key lead to the same formulas. */
export function keyOf({ rules, ...rest }: Choices): string {
  return JSON.stringify(rest) + rulesKey(rules);
}
