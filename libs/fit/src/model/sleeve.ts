import { atLeast, atMost, minus, plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import type { Armhole } from './armhole.ts';
import { midOf, type Girths } from './girths.ts';
import { INPUTS } from './inputs.ts';
import type { Lengths } from './lengths.ts';

const { thickness: t } = INPUTS;

/** How a sleeve's top meets the body. mm */
export interface SleeveTop {
  readonly topIs: 'seam' | 'girth';
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

/** A sleeve that is sewn to a straight edge: its top is a seam, and converts to nothing. */
export const seamTop = (top: Quantity, above: Quantity | null): SleeveTop => ({
  topIs: 'seam',
  top,
  topFlat: times(0.5, top),
  topInner: minus(top, times(4, t)),
  above,
});

/** The flat width of a girth on its piece: half of `G + (4 − π)t`. */
const flatWidth = (girth: Quantity): Quantity => times(0.5, plus(girth, times(4 - Math.PI, t)));

/** The room in a girth of this flat width: `2W − 4t`. */
const innerOf = (width: Quantity): Quantity => minus(times(2, width), times(4, t));

/** A sleeve whose top is a girth. */
export function girthTop(
  top: Quantity,
  above: Quantity,
  edges: { readonly topEdge: Quantity; readonly seam: Quantity },
): SleeveTop {
  const topFlat = flatWidth(top);
  return { topIs: 'girth', top, topFlat, topInner: innerOf(topFlat), above, ...edges };
}

export interface Sleeve extends SleeveTop {
  /** The cuff on the piece, flat, and the room inside. */
  readonly cuff: Quantity;
  readonly cuffFlat: Quantity;
  readonly cuffInner: Quantity;
  /** G_a, the width at which the sleeve begins above its rib. */
  readonly aboveRib: Quantity;
  /** Of the whole piece. */
  readonly length: Quantity;
  readonly underarmSeam: Quantity;
  /** Nape to cuff as the sleeve reaches it. */
  readonly reached: Quantity;
  /** The seam under the arm as each of its two ways asks; null for a sleeve that has one. */
  readonly ways: { readonly alongTop: Quantity; readonly underArm: Quantity } | null;
}

/** All that a sleeve's length depends on. `between` is what lies between the sleeves. */
interface BeforeLength {
  readonly girths: Girths;
  readonly lengths: Lengths;
  readonly between: Quantity;
  readonly underarmBelowNape: Quantity;
}

/**
 * A sleeve that is sewn to a straight edge keeps the way from nape to cuff, so its length follows the body; one whose top is a girth has two
 * ways to be measured, and lies between them.
 */
export function sleeve(choices: Choices, before: BeforeLength, joined: SleeveTop): Sleeve {
  const { made } = choices;
  const { lengths, girths, between } = before;
  const cuff = cuffOf(choices, girths, joined);
  const cuffFlat = flatWidth(cuff);
  const aboveRib = atMost(times(1 / choices.rules[`rib-draws-in-${choices.craft}`], cuff), joined.top);
  const alongTop = minus(lengths.napeToCuff, times(0.5, between), ...(joined.above === null ? [] : [joined.above]));
  const underArm = minus(plus(INPUTS.underarmLength, INPUTS.underarmRoom, INPUTS.scyeDepth), before.underarmBelowNape);
  const both = joined.topIs === 'girth';
  const seam = both
    ? plus(times(1 - choices.underarmShare, alongTop), times(choices.underarmShare, underArm))
    : alongTop;
  const length = made.sleeve ? plus(INPUTS.madeSleeve) : joined.above === null ? plus(seam) : plus(seam, joined.above);
  const underarmSeam = joined.above === null ? plus(length) : minus(length, joined.above);
  return {
    ...joined,
    cuff,
    cuffFlat,
    cuffInner: innerOf(cuffFlat),
    aboveRib,
    length,
    underarmSeam,
    reached: plus(length, times(0.5, between)),
    ways: both ? { alongTop, underArm } : null,
  };
}

/** Made, the maker's own, or by its rule, wide enough for the hand; never wider than the top. */
function cuffOf({ made, own }: Choices, { wristFlat, cuffLeast }: Girths, { top }: SleeveTop): Quantity {
  if (made.cuff) return plus(INPUTS.madeCuff);
  if (own.cuff) return midOf(times(2, INPUTS.ownCuff));
  return atMost(atLeast(midOf(wristFlat), cuffLeast), top);
}

/** All that the top of a sleeve depends on. */
export interface BeforeSleeve {
  readonly girths: Girths;
  readonly armhole: Armhole;
  readonly inset: Quantity | null;
}
