import type { Decisions } from './decisions.ts';
import { atLeast } from './limits.ts';
import { armholeForSeam, armholeSeam, capSeam, setInBindOff } from './set-in.ts';
import { raglanBodyRun, raglanSleeveRun, workOutRaglan } from './raglan.ts';
import { type Row, S } from './slots.ts';

/** Width between the armhole edges and the inset on each side, before any vest's bands (model section 6). */
export function workOutWidths(row: Row, d: Decisions): void {
  const v = row.v;
  const panel = v[S.panel]!;
  const across = row.put(
    S.acrossGarment,
    d.taken.acrossBack
      ? v[S.refCrossBack]! + d.rules['across-back-ease'] * v[S.easeChange]!
      : v[S.acrossBack]! + d.rules['across-back-ease'] * v[S.ease]!,
  );
  switch (d.construction) {
    case 'drop-shoulder':
      row.put(S.width, panel);
      row.put(S.inset, (panel - v[S.width]!) / 2);
      break;
    case 'squared-drop': {
      const spare = (panel - (d.taken.acrossBack ? across : v[S.acrossBack]!)) * d.rules['squared-inset-share'];
      const inset = row.put(S.inset, Math.min(Math.max(spare, 0), v[S.squaredInsetMost]!));
      row.put(S.width, panel - 2 * inset);
      break;
    }
    case 'set-in':
      row.put(S.width, Math.min(across, panel - 2 * v[S.setInInsetLeast]!));
      row.put(S.inset, (panel - v[S.width]!) / 2);
      break;
    case 'raglan':
      row.put(S.width, NaN);
      row.put(S.inset, NaN);
  }
}

/** Armhole depth, or a raglan's depth from the nape: ruled, made, or fitted to a sleeve that is made already. */
export function workOutArmhole(row: Row, d: Decisions): void {
  const v = row.v;
  if (d.construction === 'set-in') row.put(S.bindOff, setInBindOff(v[S.inset]!, sleeveTopOrNone(v, d), d.rules));
  if (d.construction === 'raglan') {
    row.put(S.raglan, raglanDepth(v, d));
    workOutRaglan(row, d);
    return;
  }
  const armhole = row.put(S.armhole, armholeDepth(v, d));
  if (d.construction === 'set-in') row.put(S.armholeSeam, armholeSeam(armhole, v[S.inset]!, v[S.bindOff]!, d.rules));
  else row.put(S.armholeSeam, armhole + (d.construction === 'squared-drop' ? v[S.inset]! : 0));
}

function sleeveTopOrNone(v: Float64Array, d: Decisions): number | null {
  return d.silhouette === 'vest' ? null : v[S.sleeveGirth]!;
}

function armholeDepth(v: Float64Array, d: Decisions): number {
  if (d.made.armhole) return v[S.madeArmhole]! - (d.silhouette === 'vest' ? v[S.band]! : 0);
  if (d.construction === 'set-in') {
    if (!d.made.cap) return v[S.armholeBase]!;
    const seam = capSeam(v[S.madeCap]!, v[S.sleeveGirth]!, v[S.bindOff]!, d.rules);
    return armholeForSeam(seam, v[S.inset]!, v[S.bindOff]!, d.rules);
  }
  if (d.made.sleeveTop) return v[S.madeSleeveTop]! / 2;
  return atLeast(v[S.armholeBase]! + v[S.armholeDeeper]!, v[S.armFlat]! / 2);
}

function raglanDepth(v: Float64Array, d: Decisions): number {
  if (d.made.armhole) return v[S.madeArmhole]! + (d.silhouette === 'vest' ? 0 : v[S.band]!);
  if (d.made.sleeveRaglan) {
    const body = raglanBodyRun(v, d);
    const sleeve = raglanSleeveRun(v, d);
    return Math.sqrt(sleeve * sleeve + v[S.madeSleeveRaglan]! ** 2 - body * body) + v[S.band]!;
  }
  return v[S.armholeBase]! + v[S.armholeDeeper]!;
}

/** Heights and widths of the body, finished and on the pieces. Needs neck, widths, armhole and length. */
export function workOutBody(row: Row, d: Decisions): void {
  const v = row.v;
  const raglan = d.construction === 'raglan';
  const vest = d.silhouette === 'vest';
  const bands = vest ? v[S.band]! : 0;

  const fallShare = d.construction === 'set-in' ? d.rules['shoulder-fall-share'] : 0;
  const pieceWidth = row.put(S.pieceWidth, v[S.width]! - 2 * bands);
  const shoulder = row.put(S.shoulderWidth, (v[S.width]! - v[S.pieceNeckWidth]!) / 2);
  row.put(S.pieceShoulderWidth, (pieceWidth - v[S.pieceNeckWidth]!) / 2);
  const fall = row.put(S.shoulderFall, raglan ? 0 : fallShare * shoulder);

  const underarmBelowTop = raglan ? v[S.raglan]! + v[S.backNeck]! : fall + v[S.armhole]!;
  if (d.made.bodyToUnderarm) {
    const toUnderarm = v[S.madeBodyToUnderarm]! + bands;
    row.put(S.length, toUnderarm + underarmBelowTop - v[S.backNeck]!);
  }
  const length = v[S.length]!;
  const toHem = row.put(S.shoulderToHem, length + v[S.backNeck]!);
  const toUnderarm = row.put(S.bodyToUnderarm, toHem - underarmBelowTop);
  row.put(S.pieceBodyToUnderarm, toUnderarm - bands);
  const pieceInset = row.put(S.pieceInset, v[S.inset]! + bands);
  row.put(S.backWidth, v[S.backPanel]! - 2 * pieceInset);
  row.put(S.frontWidth, v[S.frontWholePanel]! - 2 * pieceInset);
  row.put(S.pieceArmhole, v[S.armhole]! + bands);
  row.put(S.pieceLength, length - v[S.band]!);
  row.put(S.pieceBindOff, v[S.bindOff]! + bands);

  const overlapping = v[S.overlap]! / 2 - v[S.frontBand]!;
  row.put(S.frontPanel, v[S.frontWholePanel]! / 2 + overlapping);
  row.put(S.frontHem, v[S.frontWholeHem]! / 2 + overlapping);
  row.put(S.frontHalfNeck, v[raglan ? S.raglanNeck : S.pieceNeckWidth]! / 2 + overlapping);
  row.put(S.frontEdge, raglan ? v[S.pieceLength]! - v[S.raglanFrontNeck]! : toHem - v[S.pieceFrontNeck]!);
}
