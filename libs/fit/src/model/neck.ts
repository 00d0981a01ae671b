import {
  atMost,
  constant,
  max,
  min,
  minus,
  plus,
  product,
  rootWithin,
  times,
  whereKnown,
  type Quantity,
} from '#measure';
import type { Choices } from '../design/choices.ts';
import { INPUTS } from './inputs.ts';
import { neckEdge, vOnPiece } from './neck-edge.ts';

const { neckBase, acrossBack, head, band } = INPUTS;

/** A neck before its band or after: width between the high points, and depths from the line between them. mm */
export interface NeckShape {
  readonly width: Quantity;
  readonly front: Quantity;
  readonly back: Quantity;
}

export interface Neck extends NeckShape {
  /** As the neckline's rules begin it. */
  readonly start: NeckShape;
  /** λ, by which it is made larger for the head. */
  readonly scale: Quantity;
  /** P, the length of its finished edge. */
  readonly opening: Quantity;
  /** Under its band. */
  readonly piece: NeckShape;
  /** P_edge, the length of the edge that the band is worked along. */
  readonly edge: Quantity;
}

/** Whether a size of the neck was made, chosen or kept from a garment, and so stays as it is. */
export const keepsWidth = ({ made, ownNeck, kept }: Choices): boolean =>
  made.neckWidth || ownNeck.width || kept.neckWidth;
export const keepsFront = ({ ownNeck, kept }: Choices): boolean => ownNeck.front || kept.frontNeck;
export const keepsBack = ({ ownNeck, kept }: Choices): boolean => ownNeck.back || kept.backNeck;

/**
 * `between` is the width between the armhole edges, null where there are none; `share` how much of the neck's width on the
 * piece the back's neck edge has.
 */
export function neck(choices: Choices, between: Quantity | null, share: number): Neck {
  const vShaped = choices.neckline === 'v';
  const carriers = between === null ? acrossBack : min(acrossBack, between);
  const start = startOf(choices, carriers, share);
  const most = keepsWidth(choices) ? start.width : widest(choices, carriers, start.width);
  const scale = choices.silhouette === 'cardigan' ? constant(1) : scaleForHead(choices, start, most);
  const finished = scaled(choices, start, most, scale);
  const piece = onPiece(choices, finished);
  return {
    start,
    scale,
    ...finished,
    opening: neckEdge(vShaped, finished.width, finished.front, finished.back),
    piece,
    edge: neckEdge(vShaped, piece.width, piece.front, piece.back),
  };
}

/** The neckline's rules, before any head is thought of. */
function startOf(choices: Choices, carriers: Quantity, share: number): NeckShape {
  const { made, ownNeck, neckline, rules } = choices;
  const crewWidth = plus(times(1 / Math.PI, neckBase), INPUTS.neckRoom);
  const ruledWidth = neckline === 'boat' ? max(crewWidth, minus(carriers, INPUTS.boatShoulders)) : crewWidth;
  const ruledFront = {
    crew: plus(times(rules['crew-front-share'], neckBase), INPUTS.neckDeeper),
    scoop: plus(times(rules['crew-front-share'], neckBase), INPUTS.neckDeeper),
    v: times(rules['v-depth-share'], plus(INPUTS.scyeDepth, INPUTS.armholeRoom)),
    boat: INPUTS.boatDepth,
  }[neckline];
  const ruledBack = neckline === 'boat' ? INPUTS.boatDepth : times(rules['crew-back-share'], neckBase);
  return {
    width: made.neckWidth
      ? minus(times(1 / share, INPUTS.madeNeckWidth), times(2, band))
      : ownNeck.width
        ? INPUTS.ownNeckWidth
        : keepsWidth(choices)
          ? INPUTS.refNeckWidth
          : ruledWidth,
    front: ownNeck.front ? INPUTS.ownFrontNeck : keepsFront(choices) ? INPUTS.refFrontNeck : ruledFront,
    back: ownNeck.back ? INPUTS.ownBackNeck : keepsBack(choices) ? INPUTS.refBackNeck : ruledBack,
  };
}

/** The widest neck that the shoulders carry, beside its bands and a vest's; never less than half of what the rules say. */
function widest({ silhouette }: Choices, carriers: Quantity, ruled: Quantity): Quantity {
  const bands = times(silhouette === 'vest' ? 4 : 2, band);
  return max(minus(carriers, bands, INPUTS.neckFromShoulders), times(0.5, ruled));
}

/** A neck made λ times as large, in what is not kept; its width as far as the shoulders carry it. */
function scaled(choices: Choices, start: NeckShape, most: Quantity, scale: Quantity): NeckShape {
  const opens = choices.silhouette === 'cardigan';
  const times_ = (size: Quantity, keeps: boolean): Quantity => (keeps || opens ? plus(size) : product(size, scale));
  return {
    width: keepsWidth(choices) || opens ? plus(start.width) : atMost(product(start.width, scale), most),
    front: times_(start.front, keepsFront(choices)),
    back: times_(start.back, keepsBack(choices)),
  };
}

/** The smallest λ for which the head passes with its margin. A head that is not known asks for nothing: its check says so. */
function scaleForHead(choices: Choices, start: NeckShape, most: Quantity): Quantity {
  const { rules, usable, neckline } = choices;
  if (keepsWidth(choices) && keepsFront(choices) && keepsBack(choices)) return constant(1);
  const vShaped = neckline === 'v';
  const need = times(rules['head-margin'], head);
  const passing = rootWithin(1, rules['neck-widened-most'], (scale) => {
    const { width, front, back } = scaled(choices, start, most, scale);
    const throughRib = times(1 + usable.rib, neckEdge(vShaped, width, front, back));
    if (!usable.mainMeasured) return minus(throughRib, need);
    const edge = neckEdge(
      vShaped,
      plus(width, times(2, band)),
      vShaped ? vOnPiece(front, width, band) : plus(front, band),
      plus(back, band),
    );
    return minus(min(throughRib, times(1 + usable.main, edge)), need);
  });
  return whereKnown(head, passing, constant(1));
}

/** Wider and deeper by the band. A cardigan's V ends at its front edges. */
function onPiece({ neckline, silhouette }: Choices, { width, front, back }: NeckShape): NeckShape {
  const vShaped = neckline === 'v';
  return {
    width: plus(width, times(2, band)),
    front: !vShaped ? plus(front, band) : silhouette === 'cardigan' ? plus(front) : vOnPiece(front, width, band),
    back: plus(back, band),
  };
}
