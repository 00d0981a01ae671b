import { CHECK_RULES, type CheckRule, isComfort, marginOf } from './check-rules.ts';
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

/** What a change made of the check it is for: how much it has to spare, and how many checks of comfort it spoils. */
export interface Outcome {
  readonly margin: number;
  readonly spoilt: number;
}

/**
 * Works the garment out anew with a change, and looks at its checks. Null where one fails for it or is no longer known, and where
 * it comes to be another garment: a hip that it now comes down to sets the width of the whole body, or a squared drop comes or goes.
 */
export function tried(change: Change, rule: CheckRule, request: FitRequest, before: WorkedOut): Outcome | null {
  const values = changedValues(change, before);
  const after = governed(changedDecisions(change, before.decisions), values);
  const { decisions, row } = after;
  if (decisions.hipGoverns && !before.decisions.hipGoverns) return null;
  if (decisions.construction !== before.decisions.construction) return null;
  const wished = request.design.construction;
  if (wished !== decisions.construction && isSquared({ ...decisions, construction: wished }, values)) return null;
  const lost = CHECK_RULES.filter((each) => !holds(each, after) && !fails(each, before));
  if (lost.some((each) => !isComfort(each, decisions))) return null;
  return { margin: rule.applies(decisions, row) ? marginOf(rule, row) : Infinity, spoilt: lost.length };
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

/** Nothing is lost of what does not apply. */
const holds = (rule: CheckRule, { decisions, row }: Decided): boolean =>
  !rule.applies(decisions, row) || marginOf(rule, row) >= 0;

/** Whether it fails, or cannot be known. */
const fails = (rule: CheckRule, { decisions, row }: Decided): boolean =>
  rule.applies(decisions, row) && !(marginOf(rule, row) >= 0);
