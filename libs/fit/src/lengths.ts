import type { Decisions } from './decisions.ts';
import { S } from './slots.ts';
import type { Steps, Term } from './steps.ts';

const QUARTER_TURN = Math.PI / 2;

/**
 * Armhole base, centre-back length and the way from nape to cuff. The reference garment's
 * armhole gives its base by taking off its own construction's constant; the fabric's and layer's terms keep the
 * armhole's inner perimeter.
 */
export function lengthSteps(steps: Steps, d: Decisions): void {
  const share = d.rules['armhole-ease'];
  const layer: Term = [Math.PI * d.layerArm, S.layer];
  if (d.taken.armhole)
    steps.sum(
      S.armholeBase,
      [1, S.refArmhole],
      [-1, S.refDeeper],
      [share, S.easeChange],
      [QUARTER_TURN, S.thickness],
      [-QUARTER_TURN, S.refThickness],
      layer,
      [-Math.PI * d.refLayerArm, S.refLayer],
    );
  else
    steps.sum(
      S.armholeBase,
      [1, S.scye],
      [1, S.armholeRoom],
      [share, S.ease],
      [QUARTER_TURN, S.thickness],
      [-QUARTER_TURN, S.ordinaryThickness],
      layer,
    );
  // Where a body was made to its underarm, its length follows from that instead.
  steps.sum(d.made.bodyToUnderarm ? S.lengthWished : S.length, ...centreBackLength(d));
  steps.sum(S.napeToCuff, ...(d.taken.nape ? keptNapeToCuff(d) : [[1, S.nape] as const]));
}

function centreBackLength(d: Decisions): Term[] {
  if (d.length === 'custom') return [[1, S.customLength]];
  if (d.taken.length)
    return [
      [1, S.refShoulderToHem],
      [-1, S.refBackNeck],
    ];
  if (d.lengthFrom === 'hip')
    return [
      [1, S.backHip],
      [1, S.lengthOffset],
    ];
  return [
    [1, S.backWaist],
    [d.lengthFrom === 'hip below waist' ? 1 : 0, S.hipBelowWaist],
    [1, S.lengthOffset],
  ];
}

/**
 * Nape to cuff of the garment that fits: its sleeve, and half of what lies between the sleeves unless that is in it. A raglan's
 * end at its neck, below a band taken to be as deep as the new one's (assumed).
 */
function keptNapeToCuff(d: Decisions): Term[] {
  const sleeve: Term = [1, S.refSleeve];
  if (d.sleeveFromCentreBack) return [sleeve];
  if (d.refConstruction === 'raglan') return [[0.5, S.refNeckWidth], [1, S.band], sleeve];
  if (d.refWidthGiven) return [[0.5, S.refCrossBack], sleeve];
  return [[0.5, S.refChest], [-(4 - Math.PI) / 4, S.refThickness], sleeve];
}
