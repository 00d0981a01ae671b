import { minus, plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import { type Armhole, type BeforeArmhole } from './armhole.ts';
import { armBands } from './neck-band.ts';
import { INPUTS } from './inputs.ts';
import { ribDepth } from './neck-band.ts';
import type { Neck } from './neck.ts';
import { frontNeckEdge, halfEllipse } from './neck-edge.ts';

const { frontBand, overlap } = INPUTS;

/** Widths at the shoulders; of a garment with armhole edges. mm */
interface Shoulders {
  /** Finished, from a vest's band on. */
  readonly width: Quantity;
  readonly onPiece: Quantity;
  /** The inset on the piece. */
  readonly inset: Quantity;
  readonly backWidth: Quantity;
  readonly frontWidth: Quantity;
  readonly back: Quantity;
  readonly front: Quantity;
}

/** Half a front that opens. mm */
interface HalfFront {
  readonly panel: Quantity;
  readonly hem: Quantity;
  readonly neck: Quantity;
  readonly edge: Quantity;
}

/** Heights and widths of the body's pieces. mm */
export interface Body {
  readonly shoulders: Shoulders | null;
  /** f; null where the shoulders do not fall. */
  readonly shoulderFall: Quantity | null;
  /** How far the underarm lies below the nape: below the finished back neck edge. */
  readonly underarmBelowNape: Quantity;
  /** Depth of the rib at hem and cuff. */
  readonly rib: Quantity;
  /** L, finished back neck edge to hem. */
  readonly length: Quantity;
  readonly shoulderToHem: Quantity;
  readonly toUnderarm: Quantity;
  readonly pieceToUnderarm: Quantity;
  readonly pieceLength: Quantity;
  readonly half: HalfFront | null;
  readonly neckEdges: NeckEdges;
}

/** Lengths of the neck on the back, and on the front or each half of it, without bands. mm */
interface NeckEdges {
  readonly backNeck: Quantity;
  readonly frontNeck: Quantity;
}

export function body(choices: Choices, before: BeforeArmhole, armhole: Armhole): Body {
  const { neck, lengths } = before;
  const { band } = neck;
  const bands = times(armBands(choices), band);
  const shoulders = shouldersOf(before, bands);
  const shoulderFall = shoulders && armhole.fallShare > 0 ? times(armhole.fallShare, shoulders.width) : null;
  const underarmBelowNape = belowNape(armhole, shoulderFall, neck);
  const length = choices.made.bodyToUnderarm
    ? plus(INPUTS.madeBodyToUnderarm, bands, underarmBelowNape)
    : lengths.asked;
  const shoulderToHem = plus(length, neck.back);
  const toUnderarm = minus(length, underarmBelowNape);
  const pieceToUnderarm = minus(toUnderarm, bands);
  const pieceLength = minus(length, band);
  const half =
    choices.silhouette === 'cardigan' ? halfFront(before, armhole, shoulders ? shoulderToHem : pieceLength) : null;
  return {
    shoulders,
    shoulderFall,
    underarmBelowNape,
    rib: ribDepth(choices, pieceToUnderarm),
    length,
    shoulderToHem,
    toUnderarm,
    pieceToUnderarm,
    pieceLength,
    half,
    neckEdges: neckEdges(choices, armhole, shoulders !== null, half),
  };
}

/** The back of a garment without shoulders ends level at its neck. */
function neckEdges(
  { neckline }: Choices,
  { pieceNeck: { width, front, back } }: Armhole,
  shoulders: boolean,
  half: HalfFront | null,
): NeckEdges {
  const onFront = (w: Quantity): Quantity => frontNeckEdge(neckline === 'v', w, front);
  return {
    backNeck: shoulders ? halfEllipse(width, back) : plus(width),
    frontNeck: half ? times(0.5, onFront(times(2, half.neck))) : onFront(width),
  };
}

/** `A + f − d_b`; a raglan's D runs from the nape. */
function belowNape({ depth, measuredFrom }: Armhole, fall: Quantity | null, { back }: Neck): Quantity {
  if (measuredFrom === 'nape') return depth;
  return minus(fall ? plus(depth, fall) : depth, back);
}

function shouldersOf({ girths, widths, neck }: BeforeArmhole, bands: Quantity): Shoulders | null {
  const { between } = widths;
  if (between === null || widths.inset === null) return null;
  const beside = (width: Quantity): Quantity => times(0.5, minus(width, neck.piece.width));
  const inset = plus(widths.inset, bands);
  const backWidth = minus(girths.backPanel, times(2, inset));
  const frontWidth = minus(girths.frontPanel, times(2, inset));
  return {
    width: beside(between),
    onPiece: beside(minus(between, times(2, bands))),
    inset,
    backWidth,
    frontWidth,
    back: beside(backWidth),
    front: beside(frontWidth),
  };
}

/** Half a whole front and half the overlap, less the band that is worked to its edge. `top` is where its neck is measured from. */
function halfFront({ girths }: BeforeArmhole, { pieceNeck }: Armhole, top: Quantity): HalfFront {
  const half = (whole: Quantity): Quantity => minus(times(0.5, plus(whole, overlap)), frontBand);
  return {
    panel: half(girths.frontPanel),
    hem: half(girths.frontHem),
    neck: half(pieceNeck.width),
    edge: minus(top, pieceNeck.front),
  };
}
