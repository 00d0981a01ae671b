import type { Check } from './advice.ts';
import { CHECK_RULES, type CheckRule, isComfort, marginOf } from './check-rules.ts';
import type { Design } from './design.ts';
import type { FitRequest } from './fit-request.ts';
import type { Rules } from './rules.ts';
import { settle, type Settled, type WorkedOut } from './work-out.ts';

/** A change of the design, lengths in mm: its fields, its ease as `easeMm`, and rules as `rules/<name>`. */
export type Change = NonNullable<Check['remedies']>[number]['change'];

/** What a change made of the check it is for: how much it has to spare, and how many checks of comfort it spoils. */
export interface Outcome {
  readonly margin: number;
  readonly spoilt: number;
}

/**
 * Works the garment out anew with a change, and looks at its checks. Null where one fails for it or is no longer known, or where
 * a hip that it now comes down to would set the width of the whole body.
 */
export function tried(change: Change, rule: CheckRule, request: FitRequest, before: WorkedOut): Outcome | null {
  const after = changed(change, request, before);
  if (after.decisions.hipGoverns && !before.decisions.hipGoverns) return null;
  const lost = CHECK_RULES.filter((each) => !holds(each, after) && !fails(each, before));
  if (lost.some((each) => !isComfort(each, after.decisions))) return null;
  return {
    margin: rule.applies(after.decisions, after.row) ? marginOf(rule, after.row) : Infinity,
    spoilt: lost.length,
  };
}

/** Nothing is lost of what does not apply. */
const holds = (rule: CheckRule, { decisions, row }: Settled): boolean =>
  !rule.applies(decisions, row) || marginOf(rule, row) >= 0;

/** Whether it fails, or cannot be known. */
const fails = (rule: CheckRule, { decisions, row }: Settled): boolean =>
  rule.applies(decisions, row) && !(marginOf(rule, row) >= 0);

function changed(change: Change, request: FitRequest, { decisions }: WorkedOut): Settled {
  const { kappa, sized } = decisions;
  const design: Record<string, unknown> = { ...request.design };
  let rules: Rules = sized;
  for (const [field, to] of Object.entries(change)) {
    if (field.startsWith('rules/')) rules = { ...rules, [field.slice('rules/'.length)]: Number(to) * kappa };
    else if (field === 'easeMm') design['ease'] = { mm: to };
    else design[field] = to;
  }
  return settle({ ...request, design: design as unknown as Design }, kappa, rules);
}
