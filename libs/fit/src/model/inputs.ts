import { unknown, type Quantity } from '#measure';

/** What was measured, and so is uncertain: the body, then the garment that fits, flat. mm */
const MEASURED = [
  'chest',
  'hip',
  'upperArm',
  'wrist',
  'acrossBack',
  'napeToCuff',
  'scyeDepth',
  'neckBase',
  'head',
  'hand',
  'shoulderGirth',
  'scyeGirth',
  'underarmLength',
  'backWaist',
  'backHip',
  'frontWaist',
  'refChestWidth',
  'refHemWidth',
  'refShoulderToHem',
  'refBackNeck',
  'refFrontNeck',
  'refNeckWidth',
  'refCrossBack',
  'refArmhole',
  'refSleeveTop',
  'refSleeve',
  'refCuff',
  'refThickness',
  'refLayer',
  // E_g, the ease that it has on its wearer.
  'garmentEase',
  // What its back neck differs from that of its wearer, where it was not measured.
  'refBackNeckOff',
  // What a fabric that hardly gives takes off the room of each girth.
  'stiffChest',
  'stiffHip',
  'stiffUpperArm',
  // Standard uncertainties that a margin is made for.
  'headUncertainty',
  'handUncertainty',
] as const;

/** Rules at the wearer's size, mm; `neckWidening` a share. */
const RULED = [
  'ordinaryThickness',
  'hipEaseMost',
  // How much less ease a region has that wears close.
  'regionEase',
  'wristRoom',
  'armholeRoom',
  'hipBelowWaist',
  'neckFromShoulders',
  'boatShoulders',
  'boatDepth',
  'squaredInsetMost',
  'setInInsetLeast',
  'curveMost',
  'shoulderLeast',
  'bodyBelow',
  'sleeveBelow',
  'bustLine',
  'lengthOffset',
  'crewRoom',
  'neckRoom',
  'neckDeeper',
  'armholeDeeper',
  'refDeeper',
  'underarmRoom',
  'bandDepth',
  'bandMost',
  'bandLeast',
  'ribDepth',
  'ribMost',
  'ribLeast',
  'neckWidening',
  'openingLeast',
  'openingMost',
] as const;

/** The new fabric and what is worn under it. mm */
const FABRIC = ['thickness', 'layer'] as const;

/** What the maker chose, then the pieces already made. mm */
const CHOSEN = [
  'chosenEase',
  'easeChange',
  'ownBand',
  'frontBand',
  'overlap',
  'ownRib',
  'ownCuff',
  'ownOpening',
  'customLength',
  'ownNeckWidth',
  'ownFrontNeck',
  'ownBackNeck',
  'madeBack',
  'madeFront',
  'madeArmhole',
  'madeSleeveTop',
  'madeCap',
  'madeSleeveRaglan',
  'madeCuff',
  'madeSleeve',
  'madeBodyToUnderarm',
  'madeFrontArmhole',
  'madeFrontToUnderarm',
  'madeNeckWidth',
] as const;

/** All inputs of the model, in the order in which a sheet gives them as reasons. */
export const INPUT_NAMES = [...MEASURED, ...RULED, ...FABRIC, ...CHOSEN] as const;
export type InputName = (typeof INPUT_NAMES)[number];

/** The inputs as the formulas take them. */
export const INPUTS = Object.fromEntries(INPUT_NAMES.map((name) => [name, unknown()])) as Readonly<
  Record<InputName, Quantity>
>;

/** The place of each input among all. */
export const AT = Object.fromEntries(INPUT_NAMES.map((name, place) => [name, place])) as Readonly<
  Record<InputName, number>
>;

/** The values of all inputs in their places; NaN where one is not known. */
export type InputValues = readonly number[];
