import type { Figure } from '#body';
import type { Choices } from '../design/choices.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { AT, type InputValues } from '../model/inputs.ts';
import type { ValueOf } from '../model/path.ts';
import type { Rules } from '../design/rules.ts';

/** Whose garment it is, for the rules that depend on it. */
export interface Wearer {
  readonly figure: Figure | null;
  /** The rules at the wearer's size. */
  readonly sized: Rules;
}

/** How far the waist lies below the nape, mm: measured, or from the hip; NaN where neither is known. */
export function waistLevel(values: InputValues, rules: Rules): number {
  const measured = values[AT.backWaist]!;
  return Number.isNaN(measured) ? values[AT.backHip]! - rules['hip-below-waist-man'] : measured;
}

/** Whether a length comes down to the hip; where it is not known how far down that is, it is taken to. */
function reaches(length: number, values: InputValues, rules: Rules, sized: Rules): boolean {
  const below = length - waistLevel(values, rules);
  return Number.isNaN(below) || below >= sized['hip-reached'];
}

/** What decides about the length that is asked for. */
type Asked = Pick<Choices, 'length' | 'kept' | 'rules'>;

/** Whether the length that is asked for comes down to the hip; a man's named one does from regular on. */
export function askedToHip({ length, kept, rules }: Asked, values: InputValues, { figure, sized }: Wearer): boolean {
  if (length === 'custom') return reaches(values[AT.customLength]!, values, rules, sized);
  if (kept.length) {
    const backNeck = kept.fromBackNeck ? values[AT.refBackNeck]! : rules['crew-back-share'] * values[AT.neckBase]!;
    return reaches(values[AT.refShoulderToHem]! - backNeck, values, rules, sized);
  }
  return figure === 'man' ? length !== 'cropped' : values[AT.lengthOffset]! >= sized['hip-reached'];
}

/**
 * Whether a body comes down to the hip. One made to its underarm is as long as it was made, whatever was asked for: where it is longer
 * than that, it comes down to the hip if its own length does; where it is shorter, it may no longer.
 */
export function hipIsReached(
  { choices, body, lengths }: GarmentModel,
  v: ValueOf,
  values: InputValues,
  wearer: Wearer,
): boolean {
  const asked = askedToHip(choices, values, wearer);
  const longer = choices.made.bodyToUnderarm ? v(body.length) - v(lengths.asked) : 0;
  if (!(Math.abs(longer) > 1e-6)) return asked;
  const reached = reaches(v(body.length), values, choices.rules, wearer.sized);
  return longer > 0 ? asked || reached : asked && reached;
}
