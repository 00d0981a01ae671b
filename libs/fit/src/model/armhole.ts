import { atLeast, minus, plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import type { Girths } from './girths.ts';
import { INPUTS } from './inputs.ts';
import type { Lengths } from './lengths.ts';
import { armBands } from './neck-band.ts';
import type { Neck, NeckShape } from './neck.ts';
import { closeStretch } from './stretch.ts';

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
  /** A before it was made deeper for the arm or the cap by solving for it */
  readonly ruledDepth?: Quantity;
  readonly onPiece: Quantity;
  readonly measuredFrom: 'shoulder' | 'nape';
  /** Edge of half an armhole, underarm to shoulder; a raglan's slanted edge. */
  readonly seam: Quantity;
  /** The same on the piece, with what is bound off at the underarm: where a vest's band is picked up. */
  readonly pieceEdge: Quantity;
  /** What is bound off at the underarm, of a body and its sleeve. */
  readonly bindOff?: Quantity;
  /** The same on a body piece, with a vest's band. */
  readonly pieceBindOff?: Quantity;
  /** The share of a shoulder's width by which it falls. */
  readonly fallShare: number;
  /** The neck of the back on its piece: as wide as the finished one's with its band, or what the raglans leave. */
  readonly pieceNeck: NeckShape;
  /** Of a raglan: how far each edge runs across on body and sleeve, and half of the sleeve's top edge. */
  readonly raglan?: { readonly run: Quantity; readonly sleeveRun: Quantity; readonly halfTop: Quantity };
}

/** What the body's piece of an armhole that was made leaves, finished. */
export const madeDepth = (choices: Choices, { neck }: BeforeArmhole): Quantity =>
  minus(INPUTS.madeArmhole, times(armBands(choices), neck.band));

/**
 * Half of an armhole's edge that is long enough for the arm by a margin: of `c(2ℓ − πt) ≥ 1.02 (scye girth + 2πs)`, c for a close fit that
 * stretches. mm
 */
export const leastSeam = (choices: Choices): Quantity => {
  const need = plus(INPUTS.scyeGirth, times(2 * Math.PI * choices.layer.arm, INPUTS.layer));
  const stretched = choices.rules['armhole-margin'] / closeStretch(choices);
  return times(0.5, plus(times(stretched, need), times(Math.PI, INPUTS.thickness)));
};

/**
 * A of a drop shoulder or a squared drop: made, half a made sleeve's top, or deeper than a set-in's, at least half the upper sleeve, and deep
 * enough for the arm. `inset` is what of its edge lies along the underarm.
 */
function droppedDepth(choices: Choices, before: BeforeArmhole, inset: Quantity | null): Quantity {
  const { made } = choices;
  if (made.armhole) return madeDepth(choices, before);
  if (made.sleeveTop) return times(0.5, INPUTS.madeSleeveTop);
  const { lengths, girths } = before;
  const ruled = atLeast(plus(lengths.armholeBase, INPUTS.armholeDeeper), times(0.5, girths.armFlat));
  const least = leastSeam(choices);
  return atLeast(ruled, inset === null ? least : minus(least, inset));
}

/** An armhole with a straight edge, `inset` along the underarm and then up. */
export function droppedArmhole(choices: Choices, before: BeforeArmhole, inset: Quantity | null): Armhole {
  const { neck } = before;
  const depth = droppedDepth(choices, before, inset);
  const bands = times(armBands(choices), neck.band);
  const onPiece = plus(depth, bands);
  return {
    depth,
    onPiece,
    measuredFrom: 'shoulder',
    seam: inset === null ? plus(depth) : plus(depth, inset),
    pieceEdge: plus(...(inset === null ? [] : [inset]), bands, onPiece),
    fallShare: 0,
    pieceNeck: neck.piece,
  };
}
