import type { Decisions } from './decisions.ts';
import { halfEllipse } from './ellipse.ts';
import { atMost } from './limits.ts';
import { crossing } from './root.ts';
import { type Row, S } from './slots.ts';

/** A neck as it is shaped: width and depths from the line between the high points, mm. */
interface Neck {
  width: number;
  front: number;
  back: number;
}

/** Length of the edge of a neck, mm: half ellipses, or a V's two straight sides with the back's half ellipse. */
function edgeOf(neck: Neck, vShaped: boolean): number {
  const back = halfEllipse(neck.width, neck.back);
  if (!vShaped) return halfEllipse(neck.width, neck.front) + back;
  return 2 * Math.sqrt((neck.width * neck.width) / 4 + neck.front * neck.front) + back;
}

/**
 * Front depth of the piece under a band worked at right angles to the edge. A curve deepens by the band's depth;
 * a V's point moves by more, since the two bands meet.
 */
function frontOnPiece(neck: Neck, band: number, vShaped: boolean): number {
  if (!vShaped) return neck.front + band;
  const k2 = ((2 * band) / (neck.width + 2 * band)) ** 2;
  return (neck.front + Math.sqrt(k2 * neck.front * neck.front + (1 - k2) * band * band)) / (1 - k2);
}

function onPiece(neck: Neck, band: number, d: Decisions): Neck {
  const vShaped = d.neckline === 'v';
  const front = vShaped && d.silhouette === 'cardigan' ? neck.front : frontOnPiece(neck, band, vShaped);
  return { width: neck.width + 2 * band, front, back: neck.back + band };
}

/** The neck that the neckline's rules give before any head is thought of. */
function startingNeck(v: Float64Array, d: Decisions): Neck {
  const base = v[S.neckBase]!;
  const rules = d.rules;
  const crewWidth = base / Math.PI + v[S.neckRoom]!;
  const back = base * rules['crew-back-share'];
  switch (d.neckline) {
    case 'crew':
    case 'scoop':
      return { width: crewWidth, front: base * rules['crew-front-share'] + v[S.neckDeeper]!, back };
    case 'v':
      return { width: crewWidth, front: rules['v-depth-share'] * (v[S.scye]! + v[S.armholeRoom]!), back };
    case 'boat': {
      const wide = betweenArmholes(v, d) - v[S.boatShoulders]!;
      return { width: Math.max(crewWidth, wide), front: v[S.boatDepth]!, back: v[S.boatDepth]! };
    }
  }
}

/** What carries the neck: the back, or the garment between its armholes where that is narrower. A raglan has no such width. */
function betweenArmholes(v: Float64Array, d: Decisions): number {
  return d.construction === 'raglan' ? v[S.acrossBack]! : Math.min(v[S.acrossBack]!, v[S.width]!);
}

/** The widest neck that the shoulders carry. */
function widest(v: Float64Array, d: Decisions): number {
  const bands = d.silhouette === 'vest' ? 4 : 2;
  return betweenArmholes(v, d) - bands * v[S.band]! - v[S.neckFromShoulders]!;
}

function sized(start: Neck, scale: number, v: Float64Array, d: Decisions): Neck {
  return {
    width: neckWidth(start.width, scale, v, d),
    front: d.ownFrontNeck ? v[S.ownFrontNeck]! : d.taken.frontNeck ? v[S.refFrontNeck]! : start.front * scale,
    back: d.ownBackNeck ? v[S.ownBackNeck]! : d.taken.backNeck ? v[S.refBackNeck]! : start.back * scale,
  };
}

/** A width that was made, chosen or taken over stays as it is; a ruled one is scaled, within what the shoulders carry. */
function neckWidth(start: number, scale: number, v: Float64Array, d: Decisions): number {
  if (d.made.neckWidth)
    return v[S.madeNeckWidth]! / (d.construction === 'raglan' ? d.rules['raglan-neck-share'] : 1) - 2 * v[S.band]!;
  if (d.ownNeckWidth) return v[S.ownNeckWidth]!;
  if (d.taken.neckWidth) return v[S.refNeckWidth]!;
  if (d.silhouette === 'cardigan') return start * scale;
  return atMost(start * scale, Math.max(widest(v, d), start / 2));
}

/** What of an opening passes a head: the rib stretched, and the edge it is worked on where its stretch was measured. */
function passes(opening: number, edge: number, d: Decisions): number {
  const rib = opening * (1 + d.ribUsable);
  return d.mainMeasured ? Math.min(rib, edge * (1 + d.mainUsable)) : rib;
}

/** The smallest scale from 1 to the rule's most for which the head passes with its margin. A cardigan opens; a head that is not known asks for nothing, and its check says so. */
function scaleForHead(start: Neck, v: Float64Array, d: Decisions): number {
  const head = v[S.head]!;
  if (d.silhouette === 'cardigan' || Number.isNaN(head)) return 1;
  const vShaped = d.neckline === 'v';
  const spare = (scale: number): number => {
    const neck = sized(start, scale, v, d);
    const edge = d.mainMeasured ? edgeOf(onPiece(neck, v[S.band]!, d), vShaped) : 0;
    return passes(edgeOf(neck, vShaped), edge, d) - d.rules['head-margin'] * head;
  };
  const most = d.rules['neck-widened-most'];
  const unscaled = spare(1);
  if (Number.isNaN(unscaled)) return NaN;
  if (unscaled >= 0) return 1;
  if (spare(most) <= 0) return most;
  return crossing(1, most, spare);
}

/** Necks of model section 6: finished, widened for the head, then on the piece under the band. Needs `width`. */
export function workOutNeck(row: Row, d: Decisions): void {
  const v = row.v;
  const vShaped = d.neckline === 'v';
  const start = startingNeck(v, d);
  const scale = row.put(S.neckScale, scaleForHead(start, v, d));
  const finished = sized(start, scale, v, d);
  const neck = {
    width: row.put(S.neckWidth, finished.width),
    front: row.put(S.frontNeck, finished.front),
    back: row.put(S.backNeck, finished.back),
  };
  const opening = row.put(S.neckOpening, edgeOf(neck, vShaped));
  const shaped = onPiece(neck, v[S.band]!, d);
  const piece = {
    width: row.put(S.pieceNeckWidth, shaped.width),
    front: row.put(S.pieceFrontNeck, shaped.front),
    back: row.put(S.pieceBackNeck, shaped.back),
  };
  const edge = row.put(S.neckEdge, edgeOf(piece, vShaped));

  row.put(S.headNeed, v[S.head]!);
  row.put(S.headHave, passes(opening, edge, d));
}
