import type { Decisions } from './decisions.ts';
import { type Row, S } from './slots.ts';

const larger = (a: number, b: number): number => (a > b ? a : b);

/**
 * Need and have of every check (model section 8), as numbers; which of them apply and what they mean is said elsewhere.
 * A close-fitting garment's main fabric stretches at arm, armhole and hip.
 */
export function workOutWearing(row: Row, d: Decisions): void {
  const v = row.v;
  const rules = d.rules;
  const t = v[S.thickness]!;
  const layer = 2 * Math.PI * v[S.layer]!;
  const layerArm = layer * d.layerArm;
  const stretched = 1 + d.mainUsable;
  const closeStretched = d.closeFitting ? stretched : 1;
  const dropped = isDropped(d);

  row.put(S.handNeed, rules['hand-tucked'] * v[S.hand]!);
  row.put(S.handHave, v[S.cuffInner]! * (1 + d.ribUsable));
  row.put(S.cuffNeed, v[S.cuffInner]!);
  row.put(S.cuffHave, v[S.hand]!);

  row.put(S.armNeed, v[S.upperArm]! + layerArm);
  row.put(S.armHave, (v[S.sleeveTop]! - (dropped ? 4 : Math.PI) * t) * closeStretched);
  row.put(S.armholeNeed, v[S.scyeGirth]! + layerArm);
  row.put(S.armholeHave, (2 * v[S.armholeSeam]! - Math.PI * t) * closeStretched);

  const chest = v[S.chest]!;
  row.put(S.overNeed, larger(chest, (chest + v[S.shoulderGirth]!) / 2) + layer);
  row.put(S.overHave, Math.min(v[S.bodyInner]!, v[S.hemInner]!) * stretched);
  row.put(S.hipNeed, v[S.hip]! + layer);
  row.put(S.hipHave, v[S.hemInner]! * closeStretched);
  row.put(S.stretchNeed, (chest + layer) / v[S.bodyInner]! - 1);
  row.put(S.stretchHave, d.mainUsable);

  workOutNeckOnShoulders(row, d);
  row.put(S.bodyBelowNeed, v[S.rib]! + v[S.bodyBelow]!);
  row.put(S.bodyBelowHave, v[S.pieceBodyToUnderarm]!);
  row.put(S.sleeveBelowNeed, v[S.rib]! + v[S.sleeveBelow]!);
  row.put(S.sleeveBelowHave, v[S.underarmSeam]!);

  const underarmBelowBody = v[S.length]! - v[S.bodyToUnderarm]! - v[S.scye]!;
  row.put(S.underArmNeed, Math.abs(v[S.underarmSeam]! - (v[S.underarm]! - underarmBelowBody)));
  row.put(S.underArmHave, rules['underarm-difference-most']);
  row.put(S.neckDepthNeed, v[S.frontNeck]!);
  row.put(S.neckDepthHave, v[S.scye]! + v[S.bustLine]! + v[S.backNeck]!);
  row.put(S.taperNeed, (v[S.sleeveTop]! - v[S.cuff]!) / 2 / (v[S.underarmSeam]! - v[S.rib]!));
  row.put(S.taperHave, rules['sleeve-taper-most']);
  row.put(S.frontBackNeed, v[S.frontWaist]! - v[S.backWaist]!);
  row.put(S.frontBackHave, rules['front-longer-most']);
  workOutSeams(row, d);
  row.put(S.cuffReachNeed, Math.abs(v[S.reachedNapeToCuff]! - v[S.napeToCuff]!));
  row.put(S.cuffReachHave, rules['length-room']);
}

/** The neck stays on the shoulders where both are kept: width beside it, and a shoulder to carry it. The scarcer is told. */
function workOutNeckOnShoulders(row: Row, d: Decisions): void {
  const v = row.v;
  const widest = v[S.acrossBack]! - v[S.neckFromShoulders]!;
  const spareWidth = widest - v[S.neckWidth]!;
  const spareShoulder = v[S.pieceShoulderWidth]! - v[S.shoulderLeast]!;
  if (d.construction !== 'raglan' && spareShoulder < spareWidth) {
    row.put(S.neckOnNeed, v[S.shoulderLeast]!);
    row.put(S.neckOnHave, v[S.pieceShoulderWidth]!);
  } else {
    row.put(S.neckOnNeed, v[S.neckWidth]!);
    row.put(S.neckOnHave, widest);
  }
}

/** The worst of the seams between pieces made apart; a raglan's two depths where nothing was. */
function workOutSeams(row: Row, d: Decisions): void {
  const v = row.v;
  const made = d.made;
  if (!seamsCompare(d)) {
    const most = d.rules['raglan-difference-most'] * v[S.pieceRaglan]!;
    row.put(S.seamNeed, d.construction === 'raglan' ? Math.abs(v[S.sleeveRaglan]! - v[S.pieceRaglan]!) : 0);
    row.put(S.seamHave, d.construction === 'raglan' ? most : 0);
    return;
  }
  const pairs: [number, number][] = [];
  if (made.back && made.front) pairs.push([v[S.madeBack]!, v[S.madeFront]!]);
  if (made.armhole && made.sleeveTop && isDropped(d)) pairs.push([2 * v[S.armhole]!, v[S.sleeveTop]!]);
  if (made.armhole && made.cap) pairs.push([v[S.armholeSeam]!, v[S.capSeam]!]);
  if (made.armhole && made.sleeveRaglan) pairs.push([v[S.raglanEdge]!, raglanSleeveEdge(v)]);

  let need = 0;
  let have = Infinity;
  for (const [a, b] of pairs) {
    const allowed = larger(d.rules['seam-difference-most'], d.rules['seam-difference-share'] * larger(a, b));
    const difference = Math.abs(a - b);
    if (allowed - difference < have - need) {
      need = difference;
      have = allowed;
    }
  }
  row.put(S.seamNeed, need);
  row.put(S.seamHave, have);
}

const isDropped = (d: Decisions): boolean => d.construction === 'drop-shoulder' || d.construction === 'squared-drop';

/** Whether two pieces that were made meet in a seam. */
export function seamsCompare(d: Decisions): boolean {
  const { made } = d;
  const sleeve = isDropped(d) ? made.sleeveTop : made.cap || made.sleeveRaglan;
  return (made.back && made.front) || (made.armhole && sleeve);
}

function raglanSleeveEdge(v: Float64Array): number {
  const run = v[S.sleeveTop]! / 2 - v[S.capTop]! / 2 - v[S.bindOff]!;
  return Math.hypot(run, v[S.sleeveRaglan]!);
}
