import type { Decisions } from './decisions.ts';
import { type Model, modelOf } from './model.ts';
import type { Rules } from './rules.ts';
import { type Row, S } from './slots.ts';

/** What was decided, the model for it, and every number of it. */
export interface Decided {
  readonly decisions: Decisions;
  readonly model: Model;
  readonly row: Row;
}

/** What a length that is wished hangs on. */
type Wished = Pick<Decisions, 'length' | 'taken' | 'figure' | 'rules' | 'sized'>;

/** How far the waist lies below the nape, mm: measured, or told from the hip; NaN where neither is known. */
export function waistOf(v: Row, rules: Rules): number {
  const measured = v[S.backWaist]!;
  return Number.isNaN(measured) ? v[S.backHip]! - rules['hip-below-waist-man'] : measured;
}

/** Whether a length comes down to the hip; where it is not known how far down that is, it is taken to. */
function reachesHip(length: number, v: Row, { rules, sized }: Wished): boolean {
  const below = length - waistOf(v, rules);
  return Number.isNaN(below) || below >= sized['hip-reached'];
}

/** Whether the length that is wished comes down to the hip; a man's named one does from regular on. */
export function wishedToHip(wished: Wished, v: Row): boolean {
  if (wished.length === 'custom') return reachesHip(v[S.customLength]!, v, wished);
  if (wished.taken.length) return reachesHip(v[S.refShoulderToHem]! - v[S.refBackNeck]!, v, wished);
  return wished.figure === 'man' ? wished.length !== 'cropped' : v[S.lengthOffset]! >= wished.sized['hip-reached'];
}

/**
 * A body made to its underarm is as long as it was made, however long it is wished: longer than that it comes down to the hip
 * where its length does, shorter it may no more.
 */
function comesToHip(d: Decisions, v: Row): boolean {
  const wished = wishedToHip(d, v);
  const longer = d.made.bodyToUnderarm ? v[S.length]! - v[S.lengthWished]! : 0;
  if (!(Math.abs(longer) > 1e-6)) return wished;
  const reaches = reachesHip(v[S.length]!, v, d);
  return longer > 0 ? wished || reaches : wished && reaches;
}

/** What a squared drop goes in on each side, as wished, mm. */
export const hasInset = (v: Row, sized: Rules): boolean =>
  !(Math.min(v[S.insetWanted]!, sized['squared-inset-most']) < sized['squared-inset-least']);

/**
 * The decisions that hang on the numbers: whether the body comes down to the hip, which region governs, whether it fits closely,
 * whether a squared drop has an inset. Those given are taken for a beginning, and worked out anew where the numbers say otherwise.
 * A hip that is not known governs nothing: its check says that it is not known.
 */
export function governed(begun: Decisions, values: Row): Decided {
  const first = workedOut(begun, values);
  const v = first.row;
  const hipReached = comesToHip(begun, v);
  const hipGoverns = begun.hem === 'straight' && hipReached && v[S.hipFlat]! > v[S.chestFlat]! + 1e-9;
  const closeFitting = v[S.ease]! < begun.sized['close-ease'];
  const stays =
    hipReached === begun.hipReached && hipGoverns === begun.hipGoverns && closeFitting === begun.closeFitting;
  const decided = stays ? first : workedOut({ ...begun, hipReached, hipGoverns, closeFitting }, values);
  return begun.construction === 'squared-drop' && !hasInset(decided.row, begun.sized)
    ? workedOut({ ...decided.decisions, construction: 'drop-shoulder' }, values)
    : decided;
}

export function workedOut(decisions: Decisions, values: Row): Decided {
  const model = modelOf(decisions);
  return { decisions, model, row: model.steps.workOut(values) };
}
