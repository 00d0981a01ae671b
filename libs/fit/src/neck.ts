import type { Decisions } from './decisions.ts';
import { halfEllipse } from './ellipse.ts';
import { crossing } from './root.ts';
import { type Row, S } from './slots.ts';
import type { Steps } from './steps.ts';

/** Length of the edge of a neck, mm: half ellipses, or a V's two straight sides with the back's half ellipse. */
function edgeOf(width: number, front: number, back: number, vShaped: boolean): number {
  const behind = halfEllipse(width, back);
  return behind + (vShaped ? 2 * Math.sqrt((width * width) / 4 + front * front) : halfEllipse(width, front));
}

/**
 * Front depth of a V's piece under a band worked at right angles to the edge, mm: the point moves by more than the band's
 * depth, since the two bands meet. NaN where they meet all the way up.
 */
function pointOnPiece(front: number, width: number, band: number): number {
  const k2 = ((2 * band) / (width + 2 * band)) ** 2;
  return k2 < 1 ? (front + Math.sqrt(k2 * front * front + (1 - k2) * band * band)) / (1 - k2) : NaN;
}

/** A number that was made, chosen or taken over from a garment, and so stays as it is. */
export const keepsWidth = (d: Decisions): boolean => d.made.neckWidth || d.ownNeckWidth || d.taken.neckWidth;
export const keepsFront = (d: Decisions): boolean => d.ownFrontNeck || d.taken.frontNeck;
export const keepsBack = (d: Decisions): boolean => d.ownBackNeck || d.taken.backNeck;

/** Whether the shoulders carry no neck as wide as its rules begin it. */
export const keptByShoulders = (v: Row): boolean => v[S.neckWidth]! < v[S.startNeckWidth]! - 1e-9;

/** Necks: finished, widened for the head, then on the piece under the band. Needs `width`. */
export function neckSteps(steps: Steps, d: Decisions): void {
  startingWidth(steps, d);
  startingDepths(steps, d);
  finishedNeck(steps, d);
  neckOnPiece(steps, d);
}

/** The width that the neckline's rules give before any head is thought of, and the most that the shoulders carry. */
function startingWidth(steps: Steps, d: Decisions): void {
  if (d.made.neckWidth) {
    const share = d.construction === 'raglan' ? d.rules['raglan-neck-share'] : 1;
    steps.sum(S.startNeckWidth, [1 / share, S.madeNeckWidth], [-2, S.band]);
    return;
  }
  if (keepsWidth(d)) {
    steps.same(S.startNeckWidth, d.ownNeckWidth ? S.ownNeckWidth : S.refNeckWidth);
    return;
  }
  // What carries the neck: the back, or the garment between its armholes where that is narrower. A raglan has no such width.
  if (d.construction === 'raglan') steps.same(S.betweenArmholes, S.acrossBack);
  else steps.smaller(S.betweenArmholes, S.acrossBack, S.width);
  steps.sum(S.crewWidth, [1 / Math.PI, S.neckBase], [1, S.neckRoom]);
  if (d.neckline === 'boat') {
    steps.sum(S.boatWidth, [1, S.betweenArmholes], [-1, S.boatShoulders]);
    steps.larger(S.startNeckWidth, S.crewWidth, S.boatWidth);
  } else steps.same(S.startNeckWidth, S.crewWidth);

  const bands = d.silhouette === 'vest' ? 4 : 2;
  steps.sum(S.neckCarried, [1, S.betweenArmholes], [-bands, S.band], [-1, S.neckFromShoulders]);
  steps.sum(S.neckLeast, [0.5, S.startNeckWidth]);
  steps.larger(S.neckMost, S.neckCarried, S.neckLeast);
}

function startingDepths(steps: Steps, d: Decisions): void {
  const { rules } = d;
  if (keepsFront(d)) steps.same(S.startFrontNeck, d.ownFrontNeck ? S.ownFrontNeck : S.refFrontNeck);
  else if (d.neckline === 'boat') steps.same(S.startFrontNeck, S.boatDepth);
  else if (d.neckline === 'v')
    steps.sum(S.startFrontNeck, [rules['v-depth-share'], S.scye], [rules['v-depth-share'], S.armholeRoom]);
  else steps.sum(S.startFrontNeck, [rules['crew-front-share'], S.neckBase], [1, S.neckDeeper]);

  if (keepsBack(d)) steps.same(S.startBackNeck, d.ownBackNeck ? S.ownBackNeck : S.refBackNeck);
  else if (d.neckline === 'boat') steps.same(S.startBackNeck, S.boatDepth);
  else steps.sum(S.startBackNeck, [rules['crew-back-share'], S.neckBase]);
}

/** The finished neck: what is ruled is scaled until the head passes, its width within what the shoulders carry. A cardigan opens. */
function finishedNeck(steps: Steps, d: Decisions): void {
  if (d.silhouette === 'cardigan') {
    steps.same(S.neckWidth, S.startNeckWidth);
    steps.same(S.frontNeck, S.startFrontNeck);
    steps.same(S.backNeck, S.startBackNeck);
  } else {
    const most = keepsWidth(d) ? [] : [S.neckMost];
    steps.solved(
      S.neckScale,
      scaleForHead(d),
      S.startNeckWidth,
      S.startFrontNeck,
      S.startBackNeck,
      S.head,
      S.band,
      ...most,
    );
    if (keepsWidth(d)) steps.same(S.neckWidth, S.startNeckWidth);
    else {
      steps.product(S.neckScaled, S.startNeckWidth, S.neckScale);
      steps.atMost(S.neckWidth, S.neckScaled, S.neckMost);
    }
    if (keepsFront(d)) steps.same(S.frontNeck, S.startFrontNeck);
    else steps.product(S.frontNeck, S.startFrontNeck, S.neckScale);
    if (keepsBack(d)) steps.same(S.backNeck, S.startBackNeck);
    else steps.product(S.backNeck, S.startBackNeck, S.neckScale);
  }
  const vShaped = d.neckline === 'v';
  steps.solved(
    S.neckOpening,
    (width, front, back) => edgeOf(width, front, back, vShaped),
    S.neckWidth,
    S.frontNeck,
    S.backNeck,
  );
}

/**
 * The smallest scale from 1 to the rule's most for which the head passes with its margin; the most where none is enough. A
 * head that is not known asks for nothing, and its check says so.
 */
function scaleForHead(d: Decisions) {
  const vShaped = d.neckline === 'v';
  const most = d.rules['neck-widened-most'];
  const [scalesWidth, scalesFront, scalesBack] = [!keepsWidth(d), !keepsFront(d), !keepsBack(d)];
  return (width: number, front: number, back: number, head: number, band: number, widest: number): number => {
    if (Number.isNaN(head) || !(scalesWidth || scalesFront || scalesBack)) return 1;
    const spare = (scale: number): number => {
      const scaled = scalesWidth ? width * scale : width;
      const w = widest < scaled ? widest : scaled;
      const f = scalesFront ? front * scale : front;
      const b = scalesBack ? back * scale : back;
      const rib = edgeOf(w, f, b, vShaped) * (1 + d.ribUsable);
      const passes = d.mainMeasured
        ? Math.min(
            rib,
            edgeOf(w + 2 * band, vShaped ? pointOnPiece(f, w, band) : f + band, b + band, vShaped) * (1 + d.mainUsable),
          )
        : rib;
      return passes - d.rules['head-margin'] * head;
    };
    const unscaled = spare(1);
    if (Number.isNaN(unscaled)) return NaN;
    if (unscaled >= 0) return 1;
    const widened = spare(most);
    return widened <= 0 ? most : crossing([1, unscaled], [most, widened], spare);
  };
}

/** The neck on the piece, which the band is worked along: wider and deeper by it. A cardigan's V ends at its front edges. */
function neckOnPiece(steps: Steps, d: Decisions): void {
  const vShaped = d.neckline === 'v';
  steps.sum(S.pieceNeckWidth, [1, S.neckWidth], [2, S.band]);
  if (vShaped && d.silhouette === 'cardigan') steps.same(S.pieceFrontNeck, S.frontNeck);
  else if (vShaped) steps.solved(S.pieceFrontNeck, pointOnPiece, S.frontNeck, S.neckWidth, S.band);
  else steps.sum(S.pieceFrontNeck, [1, S.frontNeck], [1, S.band]);
  steps.sum(S.pieceBackNeck, [1, S.backNeck], [1, S.band]);
  steps.solved(
    S.neckEdge,
    (width, front, back) => edgeOf(width, front, back, vShaped),
    S.pieceNeckWidth,
    S.pieceFrontNeck,
    S.pieceBackNeck,
  );
}
