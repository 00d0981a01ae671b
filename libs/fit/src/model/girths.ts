import { atLeast, bySign, min, minus, plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import { INPUTS } from './inputs.ts';
import { moreEase } from './more-ease.ts';
import { withSafety } from './safety.ts';

const { chest, hip, upperArm, wrist, hand, refThickness, refLayer } = INPUTS;
const { stiffChest, stiffHip, stiffUpperArm } = INPUTS;
const { thickness: t, ordinaryThickness: t0, layer: s } = INPUTS;

/** All girths: to make (flat, doubled), on the pieces (mid), and the room inside. mm */
export interface Girths {
  /** E: chosen, or that of the garment that fits with its change. */
  readonly ease: Quantity;
  readonly chestFlat: Quantity;
  readonly hipFlat: Quantity;
  readonly armFlat: Quantity;
  readonly wristFlat: Quantity;
  /** What a cuff's piece is at least, so that the hand passes. */
  readonly cuffLeast: Quantity;
  /** M, the body's girth on the pieces. */
  readonly mid: Quantity;
  /** Half of it: a panel's width. */
  readonly panel: Quantity;
  readonly backPanel: Quantity;
  readonly frontPanel: Quantity;
  readonly bodyFlat: Quantity;
  readonly hemFlat: Quantity;
  readonly backHem: Quantity;
  readonly frontHem: Quantity;
  readonly chestWidth: Quantity;
  readonly hemWidth: Quantity;
  /** G, the whole girth of a set-in or raglan sleeve's piece. */
  readonly sleeve: Quantity;
  readonly bodyInner: Quantity;
  readonly hemInner: Quantity;
  /** Eₜ, the finished ease in the table's terms: `F − B − 2πs − 4(t − t₀) − σ`. */
  readonly easeInTable: Quantity;
  readonly flatEase: Quantity;
  readonly room: Quantity;
}

/** What a region of the body asks for beside its ease: how far a layer reaches there, and what a stiff fabric adds, if anything. */
interface Region {
  readonly layer: number;
  readonly stiff: readonly Quantity[];
}

/** A girth to make, flat: `F = x + e + 2πs + 4(t − t₀) + σ`. */
const flat = (x: Quantity, e: Quantity, { layer, stiff }: Region): Quantity =>
  plus(x, e, times(2 * Math.PI * layer, s), times(4, minus(t, t0)), ...stiff);

/** A girth kept from the garment that fits: `F = F_ref + 4(t − t_ref) + 2π(s − s_ref) + c(E − E_g) + σ`. */
const keptFlat = (width: Quantity, moreEase: Quantity, { layer, stiff }: Region, refLayerReach: number): Quantity =>
  plus(
    times(2, width),
    times(4, minus(t, refThickness)),
    times(2 * Math.PI * layer, s),
    times(-2 * Math.PI * refLayerReach, refLayer),
    moreEase,
    ...stiff,
  );

/** What stitches ÷ gauge gives of a flat girth: `M = F − (4 − π)t`. */
export const midOf = (F: Quantity): Quantity => minus(F, times(4 - Math.PI, t));

/** The flat girth of a mid girth: `F = M + (4 − π)t`. */
const flatOf = (M: Quantity): Quantity => plus(M, times(4 - Math.PI, t));

/** What a kept hem goes round at least: `hip + 2πs + 4t`. */
const roundHip = plus(hip, times(2 * Math.PI, s), times(4, t));

/** What a cuff's piece is at least, so that it passes the hand with a margin: inside `r(1.12 hand)/(1 + usable rib)`. */
const leastCuff = ({ rules, usable }: Choices): Quantity => {
  const tucked = rules['hand-tucked'];
  const need = withSafety(times(tucked, hand), times(tucked, INPUTS.handUncertainty), rules);
  return plus(times(1 / (1 + usable.rib), need), times(Math.PI, t));
};

/** The ease of a flat girth in the table's terms, without what a stiff fabric adds: `F − B − 2πs − 4(t − t₀)`. */
const easeOf = (F: Quantity, thickness: Quantity, layer: Quantity): Quantity =>
  minus(F, chest, times(2 * Math.PI, layer), times(4, minus(thickness, t0)));

export function girths(choices: Choices): Girths {
  const { rules, kept, made, layer, refLayer: refReach } = choices;
  const ease = choices.easeFromGarment ? plus(INPUTS.garmentEase, INPUTS.easeChange) : INPUTS.chosenEase;

  const hipEase = min(ease, INPUTS.hipEaseMost);
  const armEase = bySign(ease, rules['upper-arm-negative-ease'], rules['upper-arm-ease']);
  const wristEase = plus(INPUTS.wristRoom, times(rules['wrist-ease'], ease));
  const region = (reach: number, sigma?: Quantity): Region => ({
    layer: reach,
    stiff: choices.stiff && sigma ? [sigma] : [],
  });
  const [atChest, atHip] = [region(1, stiffChest), region(1, stiffHip)];
  const [atArm, atWrist] = [region(layer.arm, stiffUpperArm), region(layer.wrist)];
  const chestFlat = kept.chest
    ? keptFlat(INPUTS.refChestWidth, moreEase(choices, 'chest'), atChest, 1)
    : flat(chest, ease, atChest);
  const hipFlat = kept.hem
    ? atLeast(keptFlat(INPUTS.refHemWidth, moreEase(choices, 'hip'), atHip, 1), roundHip)
    : flat(hip, hipEase, atHip);
  const armFlat = kept.upperArm
    ? keptFlat(INPUTS.refSleeveTop, moreEase(choices, 'upper-arm', rules['upper-arm-ease']), atArm, refReach.arm)
    : flat(upperArm, armEase, atArm);
  const wristFlat = kept.wrist
    ? keptFlat(INPUTS.refCuff, moreEase(choices, 'cuff', rules['wrist-ease']), atWrist, refReach.wrist)
    : flat(wrist, wristEase, atWrist);
  const cuffLeast = leastCuff(choices);

  const mid = bodyMid(choices, chestFlat, hipFlat);
  const panel = times(0.5, mid);
  const apart = made.back && made.front;
  const backPanel = apart ? plus(INPUTS.madeBack) : panel;
  const frontPanel = apart ? plus(INPUTS.madeFront) : panel;
  const bodyFlat = flatOf(mid);
  const tapered = choices.hem === 'tapered' && choices.hipReached;
  const hemFlat = tapered ? hipFlat : bodyFlat;
  const hemPanel = times(0.5, midOf(hemFlat));
  const chestWidth = times(0.5, bodyFlat);
  const hemWidth = times(0.5, hemFlat);
  const flatInSheet = times(2, chestWidth);
  const bodyInner = minus(flatInSheet, times(4, t));
  const easeInTable = minus(easeOf(flatInSheet, t, s), ...atChest.stiff);
  return {
    ease,
    chestFlat,
    hipFlat,
    armFlat,
    wristFlat,
    mid,
    panel,
    backPanel,
    frontPanel,
    bodyFlat,
    hemFlat,
    backHem: plus(tapered ? hemPanel : backPanel),
    frontHem: plus(tapered ? hemPanel : frontPanel),
    chestWidth,
    hemWidth,
    cuffLeast,
    sleeve: made.sleeveTop ? plus(INPUTS.madeSleeveTop) : atLeast(midOf(armFlat), cuffLeast),
    bodyInner,
    hemInner: minus(times(2, hemWidth), times(4, t)),
    easeInTable,
    flatEase: minus(flatInSheet, chest),
    room: minus(bodyInner, chest, times(2 * Math.PI, s)),
  };
}

/**
 * The body's girth on the pieces: that of the chest, or of the hip where a straight body comes down to it and is wider there.
 * One panel made: the other follows it. Both made: their sum.
 */
function bodyMid({ made, hem, hipReached }: Choices, chestFlat: Quantity, hipFlat: Quantity): Quantity {
  if (made.back && made.front) return plus(INPUTS.madeBack, INPUTS.madeFront);
  if (made.back || made.front) return times(2, made.back ? INPUTS.madeBack : INPUTS.madeFront);
  return midOf(hem === 'straight' && hipReached ? atLeast(chestFlat, hipFlat) : chestFlat);
}
