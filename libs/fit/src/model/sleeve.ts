import { atMost, minus, plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import type { Armhole } from './armhole.ts';
import { midOf, type Girths } from './girths.ts';
import { INPUTS } from './inputs.ts';
import type { Lengths } from './lengths.ts';

const { thickness: t } = INPUTS;

/** How a sleeve's top meets the body. mm */
export interface SleeveTop {
  /** The width of the piece at the underarm. */
  readonly top: Quantity;
  /** The finished sleeve's flat width there. */
  readonly topFlat: Quantity;
  /** The inner girth there. */
  readonly topInner: Quantity;
  /** What of the sleeve lies above its underarm: a squared drop's inset, a cap's height, a raglan's rise; null for none. */
  readonly above: Quantity | null;
  /** The whole upper edge of a cap or raglan, and half of the edge that joins the body. */
  readonly topEdge?: Quantity;
  readonly seam?: Quantity;
}

export interface Sleeve extends SleeveTop {
  /** The cuff on the piece, flat, and the room inside. */
  readonly cuff: Quantity;
  readonly cuffFlat: Quantity;
  readonly cuffInner: Quantity;
  /** Of the whole piece. */
  readonly length: Quantity;
  readonly underarmSeam: Quantity;
  /** Nape to cuff as the sleeve reaches it. */
  readonly reached: Quantity;
}

/** A sleeve that is sewn to a straight edge: its top is a seam, and converts to nothing. */
export const seamTop = (top: Quantity, above: Quantity | null): SleeveTop => ({
  top,
  topFlat: times(0.5, top),
  topInner: minus(top, times(4, t)),
  above,
});

/** A sleeve whose top is a girth: `F = G + (4 − π)t`, inside `G − πt`. */
export const girthTop = (
  top: Quantity,
  above: Quantity,
  edges: { readonly topEdge: Quantity; readonly seam: Quantity },
): SleeveTop => ({
  top,
  topFlat: times(0.5, plus(top, times(4 - Math.PI, t))),
  topInner: minus(top, times(Math.PI, t)),
  above,
  ...edges,
});

/** The sleeve keeps the way from nape to cuff, so its length follows the body. `between` is what lies between the sleeves. */
export function sleeve(
  { made }: Choices,
  { girths, lengths }: { readonly girths: Girths; readonly lengths: Lengths },
  between: Quantity,
  joined: SleeveTop,
): Sleeve {
  const cuff = made.cuff ? plus(INPUTS.madeCuff) : atMost(midOf(girths.wristFlat), joined.top);
  const length = made.sleeve ? plus(INPUTS.madeSleeve) : minus(lengths.napeToCuff, times(0.5, between));
  return {
    ...joined,
    cuff,
    cuffFlat: times(0.5, plus(cuff, times(4 - Math.PI, t))),
    cuffInner: minus(cuff, times(Math.PI, t)),
    length,
    underarmSeam: joined.above === null ? plus(length) : minus(length, joined.above),
    reached: made.sleeve ? plus(length, times(0.5, between)) : lengths.napeToCuff,
  };
}

/** All that the top of a sleeve depends on. */
export interface BeforeSleeve {
  readonly girths: Girths;
  readonly armhole: Armhole;
  readonly inset: Quantity | null;
}
