import {
  atLeast,
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
import { bandsBeside, carriersOf, crewWidth } from './neck-band.ts';
import { neckEdge, vOnPiece } from './neck-edge.ts';
import { timesOfOpening } from './opening.ts';
import { withSafety } from './safety.ts';
import { mainStretch, neckStretch } from './stretch.ts';

const { neckBase, head } = INPUTS;

/** A neck before its band or after: width between the high points, and depths from the line between them. mm */
export interface NeckShape {
  readonly width: Quantity;
  readonly front: Quantity;
  readonly back: Quantity;
}

export interface Neck extends NeckShape {
  /** β, the depth of its band. */
  readonly band: Quantity;
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
  /** What passes the closed neck, stretched. */
  readonly passes: Quantity;
  /** The head with its margin: what is to pass. */
  readonly head: Quantity;
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
export function neck(choices: Choices, between: Quantity | null, band: Quantity, share: number): Neck {
  const carriers = carriersOf(between);
  const start = startOf(choices, carriers, band, share);
  const most = atLeast(widenedMost(choices, carriers, band), start.width);
  const headWithMargin = withSafety(head, INPUTS.headUncertainty, choices.rules);
  const scale = scaleForHead(choices, { start, most, band, head: headWithMargin });
  const finished = scaled(choices, start, most, scale);
  const piece = onPiece(choices, finished, band);
  const { opening, edge, passes } = edges(choices, finished, piece);
  return { band, start, scale, ...finished, opening, piece, edge, passes, head: headWithMargin };
}

/** The neckline's rules, before any head is thought of; as wide as leaves the shoulders, but never under a crew's. */
function startOf(choices: Choices, carriers: Quantity, band: Quantity, share: number): NeckShape {
  const { made, ownNeck, neckline, rules } = choices;
  const shoulders = minus(carriers, times(bandsBeside(choices), band), INPUTS.neckFromShoulders);
  const leavesShoulders = (width: Quantity): Quantity => atMost(width, max(shoulders, crewWidth(INPUTS.crewRoom)));
  const ruledWidth = leavesShoulders(
    neckline === 'boat'
      ? max(crewWidth(INPUTS.crewRoom), minus(carriers, INPUTS.boatShoulders))
      : crewWidth(INPUTS.neckRoom),
  );
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

/** How wide a neck is made for the head: until it takes a share of what carries it, its bands included, and leaves the shoulders. */
function widenedMost(choices: Choices, carriers: Quantity, band: Quantity): Quantity {
  const beside = times(bandsBeside(choices) - 2, band);
  const ofCarriers = times(choices.rules['neck-widened-share'], minus(carriers, beside));
  const leavesShoulders = minus(carriers, times(bandsBeside(choices), band), INPUTS.neckFromShoulders);
  return min(minus(ofCarriers, times(2, band)), leavesShoulders);
}

/** A neck made λ times as large, in what is not kept; its width as far as it may be. */
function scaled(choices: Choices, start: NeckShape, most: Quantity, scale: Quantity): NeckShape {
  const opens = choices.silhouette === 'cardigan';
  const times_ = (size: Quantity, keeps: boolean): Quantity => (keeps || opens ? plus(size) : product(size, scale));
  return {
    width: keepsWidth(choices) || opens ? plus(start.width) : atMost(product(start.width, scale), most),
    front: times_(start.front, keepsFront(choices)),
    back: times_(start.back, keepsBack(choices)),
  };
}

interface BeforeScale {
  readonly start: NeckShape;
  readonly most: Quantity;
  readonly band: Quantity;
  readonly head: Quantity;
}

/**
 * λ: the smallest in [1, 1 + ½κ] for which the head passes with its margin, an opening of the maker's own counted; of a neck that opens where
 * she said so, 1; of one that no λ makes large enough, a fixed one. A head that is not known asks for nothing: its check says so.
 */
function scaleForHead(choices: Choices, { start, most, band, head: wanted }: BeforeScale): Quantity {
  const { rules, neckScale, silhouette } = choices;
  if (silhouette === 'cardigan' || (keepsWidth(choices) && keepsFront(choices) && keepsBack(choices)))
    return constant(1);
  switch (neckScale) {
    case 'as-is':
      return constant(1);
    case 'opened':
      return constant(rules['neck-opened-scale']);
    case 'for-head': {
      const larger = rootWithin(0, 1, (x) => {
        const shape = scaled(choices, start, most, plus(constant(1), product(x, INPUTS.neckWidening)));
        const { passes } = edges(choices, shape, onPiece(choices, shape, band));
        const opening = choices.opening.how === 'own' ? timesOfOpening(choices.opening.at, INPUTS.ownOpening) : [];
        return minus(plus(passes, ...opening), wanted);
      });
      const scale = plus(constant(1), product(larger, INPUTS.neckWidening));
      return whereKnown(head, scale, constant(1));
    }
  }
}

/** The lengths of a neck's edges, and what passes them: its band stretches with the rib, and its edge with the main fabric. */
function edges(choices: Choices, { width, front, back }: NeckShape, piece: NeckShape) {
  const vShaped = choices.neckline === 'v';
  const opening = neckEdge(vShaped, width, front, back);
  const edge = neckEdge(vShaped, piece.width, piece.front, piece.back);
  const throughBand = times(neckStretch(choices), opening);
  const passes = choices.usable.mainMeasured ? min(throughBand, times(mainStretch(choices), edge)) : throughBand;
  return { opening, edge, passes };
}

/** Wider and deeper by the band. A cardigan's V ends at its front edges. */
function onPiece({ neckline, silhouette }: Choices, { width, front, back }: NeckShape, band: Quantity): NeckShape {
  const vShaped = neckline === 'v';
  return {
    width: plus(width, times(2, band)),
    front: !vShaped ? plus(front, band) : silhouette === 'cardigan' ? plus(front) : vOnPiece(front, width, band),
    back: plus(back, band),
  };
}
