import type { Decisions } from './decisions.ts';
import { type Row, S } from './slots.ts';

/**
 * Armhole base, centre-back length and the way from nape to cuff (model sections 2, 3 and 6). The reference garment's
 * armhole gives its base by taking off its own construction's constant; the fabric's and layer's terms keep the
 * armhole's inner perimeter.
 */
export function workOutLengths(row: Row, d: Decisions): void {
  const v = row.v;
  const t = v[S.thickness]!;
  const half = Math.PI / 2;
  const layer = Math.PI * v[S.layer]! * d.layerArm;
  const share = d.rules['armhole-ease'];

  row.put(
    S.armholeBase,
    d.taken.armhole
      ? v[S.refArmhole]! -
          v[S.refDeeper]! +
          share * v[S.easeChange]! +
          half * (t - v[S.refThickness]!) +
          layer -
          Math.PI * v[S.refLayer]! * d.refLayerArm
      : v[S.scye]! + v[S.armholeRoom]! + share * v[S.ease]! + half * (t - v[S.ordinaryThickness]!) + layer,
  );
  row.put(S.length, centreBackLength(v, d));
  row.put(S.napeToCuff, d.taken.nape ? keptNapeToCuff(v, d) : v[S.nape]!);
}

function centreBackLength(v: Float64Array, d: Decisions): number {
  if (d.customLength) return v[S.customLength]!;
  if (d.taken.length) return v[S.refShoulderToHem]! - v[S.refBackNeck]!;
  if (d.lengthFrom === 'hip') return v[S.backHip]! + v[S.lengthOffset]!;
  return v[S.backWaist]! + (d.lengthFrom === 'hip below waist' ? v[S.hipBelowWaist]! : 0) + v[S.lengthOffset]!;
}

/** Nape to cuff of the garment that fits: its sleeve, and half of what lies between the sleeves unless that is in it. */
function keptNapeToCuff(v: Float64Array, d: Decisions): number {
  if (d.sleeveFromCentreBack) return v[S.refSleeve]!;
  return betweenSleeves(v, d) / 2 + v[S.refSleeve]!;
}

function betweenSleeves(v: Float64Array, d: Decisions): number {
  if (d.refConstruction === 'raglan') return v[S.refNeckWidth]!;
  if (d.refWidthGiven) return v[S.refCrossBack]!;
  return v[S.refChest]! - ((4 - Math.PI) / 2) * v[S.refThickness]!;
}
