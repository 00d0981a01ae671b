/**
 * Every number of the model has a place in one row of numbers, in the order in which it is worked out. Inputs come
 * first (what was measured, chosen, or ruled), then what follows from them. Any one of them can be nudged and the rest
 * worked out again: the explanations, uncertainties, roundings and follow-ups of a sheet are all found that way.
 * Lengths in mm; the needs and haves of checks at the end, some of them ratios.
 */
const INPUTS = [
  // the body
  'chest',
  'hip',
  'upperArm',
  'wrist',
  'acrossBack',
  'nape',
  'scye',
  'neckBase',
  'head',
  'hand',
  'shoulderGirth',
  'scyeGirth',
  'underarm',
  'backWaist',
  'backHip',
  'frontWaist',
  // the garment that fits, flat
  'refChest',
  'refHem',
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
  // the fabric and what is worn beneath
  'thickness',
  'layer',
  // chosen
  'chosenEase',
  'easeChange',
  'customLength',
  'band',
  'frontBand',
  'overlap',
  'rib',
  'ownNeckWidth',
  'ownFrontNeck',
  'ownBackNeck',
  // ruled, in mm and already scaled
  'ordinaryThickness',
  'hipEaseMost',
  'wristRoom',
  'armholeRoom',
  'armholeDeeper',
  'refDeeper',
  'lengthOffset',
  'hipBelowWaist',
  'neckRoom',
  'neckDeeper',
  'boatShoulders',
  'boatDepth',
  'neckFromShoulders',
  'squaredInsetMost',
  'setInInsetLeast',
  'shoulderLeast',
  'bodyBelow',
  'sleeveBelow',
  'bustLine',
  // pieces already made
  'madeBack',
  'madeFront',
  'madeArmhole',
  'madeSleeveTop',
  'madeCap',
  'madeSleeveRaglan',
  'madeCuff',
  'madeSleeve',
  'madeBodyToUnderarm',
  'madeNeckWidth',
] as const;

const WORKED_OUT = [
  // girths: flat, then mid girths on the pieces
  'ease',
  'chestFlat',
  'hipFlat',
  'armFlat',
  'wristFlat',
  'mid',
  'panel',
  'bodyFlat',
  'hemFlat',
  'hemPanel',
  'backPanel',
  'frontWholePanel',
  'backHem',
  'frontWholeHem',
  'chestWidth',
  'hemWidth',
  'sleeveGirth',
  'easeInTable',
  'easeOfReference',
  'flatEase',
  'bodyInner',
  'hemInner',
  'room',
  // lengths
  'length',
  'napeToCuff',
  // armhole and widths
  'armholeBase',
  'armhole',
  'raglan',
  'acrossGarment',
  'inset',
  'width',
  // neck, finished, then on the piece
  'neckWidth',
  'frontNeck',
  'backNeck',
  'neckScale',
  'neckOpening',
  'pieceNeckWidth',
  'pieceFrontNeck',
  'pieceBackNeck',
  'neckEdge',
  // the body's pieces
  'shoulderWidth',
  'shoulderFall',
  'shoulderToHem',
  'bodyToUnderarm',
  'pieceWidth',
  'backWidth',
  'frontWidth',
  'pieceArmhole',
  'pieceBodyToUnderarm',
  'pieceInset',
  'pieceShoulderWidth',
  'pieceLength',
  'bindOff',
  'pieceBindOff',
  'armholeSeam',
  'frontPanel',
  'frontHem',
  'frontHalfNeck',
  'frontEdge',
  // raglan
  'pieceRaglan',
  'raglanNeck',
  'raglanRun',
  'raglanEdge',
  'raglanFrontNeck',
  // the sleeve
  'sleeveTop',
  'sleeveTopFlat',
  'cuff',
  'cuffFlat',
  'cuffInner',
  'capTop',
  'cap',
  'capSeam',
  'sleeveRaglan',
  'sleeve',
  'underarmSeam',
  'reachedNapeToCuff',
] as const;

const CHECKED = [
  'headNeed',
  'headHave',
  'handNeed',
  'handHave',
  'cuffNeed',
  'cuffHave',
  'armNeed',
  'armHave',
  'armholeNeed',
  'armholeHave',
  'overNeed',
  'overHave',
  'hipNeed',
  'hipHave',
  'stretchNeed',
  'stretchHave',
  'neckOnNeed',
  'neckOnHave',
  'bodyBelowNeed',
  'bodyBelowHave',
  'sleeveBelowNeed',
  'sleeveBelowHave',
  'underArmNeed',
  'underArmHave',
  'neckDepthNeed',
  'neckDepthHave',
  'taperNeed',
  'taperHave',
  'frontBackNeed',
  'frontBackHave',
  'seamNeed',
  'seamHave',
  'cuffReachNeed',
  'cuffReachHave',
] as const;

export type InputName = (typeof INPUTS)[number];
export type SlotName = InputName | (typeof WORKED_OUT)[number] | (typeof CHECKED)[number];

const NAMES: readonly SlotName[] = [...INPUTS, ...WORKED_OUT, ...CHECKED];
export const INPUT_NAMES: readonly InputName[] = INPUTS;
export const INPUT_COUNT = INPUTS.length;
export const SLOT_COUNT = NAMES.length;

/** Place of each number in the row. */
export const S = Object.fromEntries(NAMES.map((name, at) => [name, at])) as Readonly<Record<SlotName, number>>;

/** A row of numbers being worked out, at most one of them nudged. */
export class Row {
  readonly v = new Float64Array(SLOT_COUNT).fill(NaN);
  /** Which number is nudged, −1 for none, and by how much. */
  nudged = -1;
  by = 0;

  /** Puts a worked-out number in its place, nudged if it is the one; the place's new value. */
  put(slot: number, value: number): number {
    const nudged = slot === this.nudged ? value + this.by : value;
    this.v[slot] = nudged;
    return nudged;
  }
}
