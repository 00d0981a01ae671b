import { atLeast, minus, plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import type { Girths } from './girths.ts';
import { INPUTS } from './inputs.ts';
import type { Lengths } from './lengths.ts';
import type { Neck, NeckShape } from './neck.ts';

/** Between the armhole edges, before any vest's bands. mm */
export interface Widths {
  /** Y; null where there are no armhole edges. */
  readonly between: Quantity | null;
  /** i, what the body goes in on each side at the underarm. */
  readonly inset: Quantity | null;
  /** i as asked for, before its limits, where it has some. */
  readonly insetAsked?: Quantity;
  /** The body goes straight up from its sides. */
  readonly straight?: true;
}

/** All that an armhole depends on. */
export interface BeforeArmhole {
  readonly girths: Girths;
  readonly lengths: Lengths;
  readonly widths: Widths;
  readonly neck: Neck;
}

/** The armhole, or the raglan, of the body. mm */
export interface Armhole {
  /** A from the shoulder; a raglan's D from the nape. */
  readonly depth: Quantity;
  readonly onPiece: Quantity;
  /** How far the underarm lies below the line between the high points of the shoulders, the shoulders' fall left out. */
  readonly belowNeckLine: Quantity;
  /** Edge of half an armhole, underarm to shoulder; a raglan's slanted edge. */
  readonly seam: Quantity;
  /** What is bound off at the underarm, of a body and its sleeve. */
  readonly bindOff?: Quantity;
  /** The share of a shoulder's width by which it falls. */
  readonly fallShare: number;
  /** The neck of the back on its piece: as wide as the finished one's with its band, or what the raglans leave. */
  readonly pieceNeck: NeckShape;
  /** Of a raglan: how far each edge runs across on body and sleeve, and half of the sleeve's top edge. */
  readonly raglan?: { readonly run: Quantity; readonly sleeveRun: Quantity; readonly halfTop: Quantity };
}

/** A vest's armholes have bands of their own: 1, else 0. */
export const armBands = ({ silhouette }: Choices): 0 | 1 => (silhouette === 'vest' ? 1 : 0);

/** What the body's piece of an armhole that was made leaves, finished. */
export const madeDepth = (choices: Choices): Quantity =>
  minus(INPUTS.madeArmhole, times(armBands(choices), INPUTS.band));

/** A of a drop shoulder or a squared drop: made, half a made sleeve's top, or deeper than a set-in's and at least half the upper sleeve. */
export function droppedDepth(choices: Choices, { girths, lengths }: BeforeArmhole): Quantity {
  const { made } = choices;
  if (made.armhole) return madeDepth(choices);
  if (made.sleeveTop) return times(0.5, INPUTS.madeSleeveTop);
  return atLeast(plus(lengths.armholeBase, INPUTS.armholeDeeper), times(0.5, girths.armFlat));
}

/** An armhole with a straight edge, whose half is `seam` long. */
export function droppedArmhole(choices: Choices, { neck }: BeforeArmhole, depth: Quantity, seam: Quantity): Armhole {
  return {
    depth,
    onPiece: plus(depth, times(armBands(choices), INPUTS.band)),
    belowNeckLine: plus(depth),
    seam,
    fallShare: 0,
    pieceNeck: neck.piece,
  };
}
