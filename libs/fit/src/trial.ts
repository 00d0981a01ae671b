import { CHECK_RULES, type CheckRule, isComfort, isSure, marginOf } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import type { FitRequest } from './fit-request.ts';
import { type Decided, governed, hasInset, workedOut } from './governed.ts';
import { type InputName, type Row, S } from './slots.ts';
import type { WorkedOut } from './work-out.ts';

/** The input that each number to be changed is: one of the design, its ease as `easeMm`, or a rule as `rules/<name>`. */
const INPUT_OF = {
  easeMm: 'chosenEase',
  easeChangeMm: 'easeChange',
  customLengthMm: 'customLength',
  neckWidthMm: 'ownNeckWidth',
  frontNeckDepthMm: 'ownFrontNeck',
  backNeckDepthMm: 'ownBackNeck',
  bandMm: 'band',
  ribMm: 'rib',
  'rules/wrist-room': 'wristRoom',
  'rules/armhole-room': 'armholeRoom',
} as const satisfies Readonly<Record<string, InputName>>;

export type Field = keyof typeof INPUT_OF;

/** A change of the design: numbers in mm, rules as they are for an adult, and choices by name. */
export type Change = Readonly<Partial<Record<Field, number>>> & {
  readonly length?: 'custom';
  readonly hem?: Decisions['hem'];
};

/** What a change made of the check it is for: how much it has to spare; how many checks of comfort it spoils, and how many others come to be doubtful, or more so. */
export interface Outcome {
  readonly margin: number;
  readonly spoilt: number;
  readonly tightened: number;
}

/**
 * Works the garment out anew with a change, and looks at its checks. Null where one fares worse for it that does not hold
 * then, where a number is lost, or the neck comes to be tight or too deep to wear; and where it comes to be another garment: a
 * hip that it now comes down to sets the width of the whole body, or a squared drop comes or goes.
 */
export function tried(change: Change, rule: CheckRule, request: FitRequest, before: WorkedOut): Outcome | null {
  const values = changedValues(change, before);
  const after = governed(changedDecisions(change, before.decisions), values);
  const { decisions, row } = after;
  if (decisions.hipGoverns && !before.decisions.hipGoverns) return null;
  if (decisions.construction !== before.decisions.construction) return null;
  const wished = request.design.construction;
  if (wished !== decisions.construction && isSquared({ ...decisions, construction: wished }, values)) return null;
  if (losesNumber(before, row) || spoilsNeck(before.row, row, decisions)) return null;
  const lost = CHECK_RULES.filter((each) => faresWorse(each, before, after));
  if (lost.some((each) => !isComfort(each, decisions))) return null;
  return {
    margin: rule.applies(decisions, row) ? marginOf(rule, row) : Infinity,
    spoilt: lost.length,
    tightened: CHECK_RULES.filter((each) => each !== rule && tightens(each, before, after)).length,
  };
}

/** Whether a check that is more than comfort still holds, with less to spare than before and less than its doubt. */
function tightens(rule: CheckRule, before: WorkedOut, { decisions, row }: Decided): boolean {
  const margin = marginOf(rule, row);
  if (!rule.applies(decisions, row) || isComfort(rule, decisions) || !(margin >= 0)) return false;
  if (!(margin < marginOf(rule, before.row) - 1e-6)) return false;
  return !isSure(margin, rule, before.nudging.uncertainty(rule.have, rule.need), row, decisions);
}

/** Whether a dimension of the sheet comes to be below nothing, or not known. */
const losesNumber = ({ model, row: before }: Decided, after: Row): boolean =>
  model.plan.numbers.some(({ slot }) => before[slot]! >= 0 && !(after[slot]! >= 0));

/** Whether a neck comes to be smaller than what it goes round, or deeper than a sweater's is: to the fullest part of the chest or the underarm, a V to half the body below it (assumed). */
function spoilsNeck(before: Row, after: Row, { neckline }: Decisions): boolean {
  if (after[S.neckOpening]! < before[S.neckOpening]! - 1e-6 && after[S.neckOpening]! < after[S.neckBase]!) return true;
  if (!(after[S.frontNeck]! > before[S.frontNeck]! + 1e-6)) return false;
  if (neckline === 'v')
    return after[S.pieceFrontNeck]! > after[S.underarmBelowTop]! + after[S.pieceBodyToUnderarm]! / 2;
  return after[S.frontNeck]! > after[S.neckDepthHave]! || after[S.pieceFrontNeck]! > after[S.underarmBelowTop]!;
}

function changedValues(change: Change, { inputs, decisions }: WorkedOut): Row {
  const values = inputs.values.slice();
  for (const field in INPUT_OF) {
    const to = change[field as Field];
    if (to !== undefined) values[S[INPUT_OF[field as Field]]] = field.startsWith('rules/') ? to * decisions.kappa : to;
  }
  return values;
}

/** Numbers that the maker says herself are hers from then on. */
function changedDecisions(change: Change, d: Decisions): Decisions {
  const { hem, length, neckWidthMm, frontNeckDepthMm, backNeckDepthMm } = change;
  const own = neckWidthMm !== undefined || frontNeckDepthMm !== undefined || backNeckDepthMm !== undefined;
  if (!own && hem === undefined && length === undefined) return d;
  return {
    ...d,
    hem: hem ?? d.hem,
    length: length ?? d.length,
    ownNeckWidth: d.ownNeckWidth || neckWidthMm !== undefined,
    ownFrontNeck: d.ownFrontNeck || frontNeckDepthMm !== undefined,
    ownBackNeck: d.ownBackNeck || backNeckDepthMm !== undefined,
  };
}

const isSquared = (d: Decisions, values: Row): boolean => hasInset(workedOut(d, values).row, d.sized);

const HOLDS = 0;
const UNKNOWN = 1;
const FAILS = 2;

/** How a check fares: what does not apply holds, and what an unmeasured stretch may make good is not known. */
function fares(rule: CheckRule, { decisions, row }: Decided): number {
  const margin = marginOf(rule, row);
  if (!rule.applies(decisions, row) || margin >= 0) return HOLDS;
  return margin < 0 && !(rule.stretches(decisions) && !decisions.mainMeasured) ? FAILS : UNKNOWN;
}

/** Whether a check does not hold after, and held before, or was better known, or lacked less. */
function faresWorse(rule: CheckRule, before: Decided, after: Decided): boolean {
  const now = fares(rule, after);
  if (now === HOLDS) return false;
  return now > fares(rule, before) || marginOf(rule, after.row) < marginOf(rule, before.row) - 1e-6;
}
