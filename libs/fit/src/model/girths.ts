import { atLeast, bySign, min, minus, plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import { INPUTS } from './inputs.ts';

const { chest, hip, upperArm, wrist, refThickness, refLayer, easeChange } = INPUTS;
const { thickness: t, ordinaryThickness: t0, layer: s } = INPUTS;

/** All girths: to make (flat, doubled), on the pieces (mid), and the room inside. mm */
export interface Girths {
  /** E: chosen, or that of the garment that fits with its change. */
  readonly ease: Quantity;
  readonly easeOfGarment: Quantity;
  readonly chestFlat: Quantity;
  readonly hipFlat: Quantity;
  readonly armFlat: Quantity;
  readonly wristFlat: Quantity;
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
  /** Eₜ, the finished ease in the table's terms. */
  readonly easeInTable: Quantity;
  readonly flatEase: Quantity;
  readonly room: Quantity;
}

/** A girth to make, flat: `F = x + e + 2πs + 4(t − t₀)`. */
const flat = (x: Quantity, e: Quantity, reach = 1): Quantity =>
  plus(x, e, times(2 * Math.PI * reach, s), times(4, minus(t, t0)));

/** A girth kept from the garment that fits: `F = F_ref + 4(t − t_ref) + 2π(s − s_ref) + c·ΔE`. */
const keptFlat = (width: Quantity, c: number, reach = 1, refReach = 1): Quantity =>
  plus(
    times(2, width),
    times(4, minus(t, refThickness)),
    times(2 * Math.PI * reach, s),
    times(-2 * Math.PI * refReach, refLayer),
    times(c, easeChange),
  );

/** What stitches ÷ gauge gives of a flat girth: `M = F − (4 − π)t`. */
export const midOf = (F: Quantity): Quantity => minus(F, times(4 - Math.PI, t));

/** The flat girth of a mid girth: `F = M + (4 − π)t`. */
const flatOf = (M: Quantity): Quantity => plus(M, times(4 - Math.PI, t));

/** The ease of a flat girth in the table's terms: `Eₜ = F − B − 2πs − 4(t − t₀)`. */
const easeOf = (F: Quantity, thickness: Quantity, layer: Quantity): Quantity =>
  minus(F, chest, times(2 * Math.PI, layer), times(4, minus(thickness, t0)));

export function girths(choices: Choices): Girths {
  const { rules, kept, made, layer, refLayer: refReach } = choices;
  const easeOfGarment = easeOf(times(2, INPUTS.refChestWidth), refThickness, refLayer);
  const ease = choices.easeFromGarment ? plus(easeOfGarment, easeChange) : INPUTS.chosenEase;

  const hipEase = min(ease, INPUTS.hipEaseMost);
  const armEase = bySign(ease, rules['upper-arm-negative-ease'], rules['upper-arm-ease']);
  const wristEase = plus(INPUTS.wristRoom, times(rules['wrist-ease'], ease));
  const chestFlat = kept.chest ? keptFlat(INPUTS.refChestWidth, 1) : flat(chest, ease);
  const hipFlat = kept.hem ? keptFlat(INPUTS.refHemWidth, 1) : flat(hip, hipEase);
  const armFlat = kept.upperArm
    ? keptFlat(INPUTS.refSleeveTop, rules['upper-arm-ease'], layer.arm, refReach.arm)
    : flat(upperArm, armEase, layer.arm);
  const wristFlat = kept.wrist
    ? keptFlat(INPUTS.refCuff, rules['wrist-ease'], layer.wrist, refReach.wrist)
    : flat(wrist, wristEase, layer.wrist);

  const mid = bodyMid(choices, chestFlat, hipFlat);
  const panel = times(0.5, mid);
  const apart = made.back && made.front;
  const backPanel = apart ? plus(INPUTS.madeBack) : panel;
  const frontPanel = apart ? plus(INPUTS.madeFront) : panel;
  const bodyFlat = flatOf(mid);
  const tapered = choices.hem === 'tapered' && choices.hipReached;
  const hemFlat = tapered ? hipFlat : bodyFlat;
  const hemPanel = times(0.5, midOf(hemFlat));
  const bodyInner = minus(bodyFlat, times(4, t));
  return {
    ease,
    easeOfGarment,
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
    chestWidth: times(0.5, bodyFlat),
    hemWidth: times(0.5, hemFlat),
    sleeve: made.sleeveTop ? plus(INPUTS.madeSleeveTop) : midOf(armFlat),
    bodyInner,
    hemInner: minus(hemFlat, times(4, t)),
    easeInTable: easeOf(bodyFlat, t, s),
    flatEase: minus(bodyFlat, chest),
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
