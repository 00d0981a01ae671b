import type { Check } from './advice.ts';
import { codeOf, type Found, messageFor } from './check-message.ts';
import { chanceOfFailing, CHECK_RULES, type CheckRule, doubtOf, isComfort, isSmall, marginOf } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import { doubtfulMeasure } from './doubt.ts';
import type { FitRequest } from './fit-request.ts';
import type { CheckMessage } from './messages/check-codes.ts';
import type { MissingMeasures } from './missing.ts';
import { easeThatHelps, remediesFor } from './remedies.ts';
import type { Row } from './slots.ts';
import type { WorkedOut } from './work-out.ts';

/** A check with what came of it. */
export interface Checked {
  readonly rule: CheckRule;
  readonly comfort: boolean;
  readonly check: Check;
}

/** Works out every check of a sheet. Uncertainties take in correlation and, for girths, the making. */
export function checkAll(request: FitRequest, worked: WorkedOut, missing: () => MissingMeasures): Checked[] {
  const checked: Checked[] = [];
  for (const rule of CHECK_RULES)
    checked.push({
      rule,
      comfort: isComfort(rule, worked.decisions),
      check: checkOne(rule, request, worked, missing, checked),
    });
  return checked;
}

/** `before` are the checks that come before it. */
function checkOne(
  rule: CheckRule,
  request: FitRequest,
  worked: WorkedOut,
  missing: () => MissingMeasures,
  before: readonly Checked[],
): Check {
  const { row: v, decisions: d, nudging } = worked;
  const name = rule.check;
  if (!rule.applies(d, v)) return { check: name, verdict: 'n/a', code: name, params: { finding: 'does-not-apply' } };
  const need = v[rule.need]!;
  const have = v[rule.have]!;
  if (Number.isNaN(need) || Number.isNaN(have)) return unknown(rule, v, d, missing());
  const margin = marginOf(rule, v);
  const measured = nudging.uncertainty(rule.have, rule.need);
  const u = doubtOf(rule, measured, v, d);
  const chance = chanceOfFailing(margin, u);
  const verdict = verdictOf(rule, margin, chance, d);
  const ease = verdict === 'fine' ? null : easeThatHelps(rule, nudging);
  const remedies = verdict === 'fails' || verdict === 'tight' ? remediesFor(rule, measured, request, worked) : [];
  const uncertain = verdict === 'tight' && margin >= 0 ? doubtfulMeasure(rule, measured, request, worked) : null;
  const message = messageFor(rule, verdict, {
    v,
    d,
    margin,
    ease,
    uncertain,
    offered: (field) => remedies.some(({ change }) => field in change),
    holdsSurely: (name) => before.some(({ check }) => check.check === name && check.verdict === 'fine'),
  });
  return {
    check: name,
    verdict,
    need,
    have,
    margin,
    u,
    chanceOfFailing: chance,
    ...message,
    ...(uncertain !== null && { needs: [uncertain] }),
    ...(remedies.length > 0 && { remedies }),
  };
}

/** A check whose numbers are not all known: what to measure, and what that would tell. */
function unknown(rule: CheckRule, v: Row, d: Decisions, missing: MissingMeasures): Check {
  const slots = [rule.need, rule.have].filter((slot) => Number.isNaN(v[slot]!));
  const reasons = slots.map((slot) => missing.reasonFor(slot));
  const needs = [...new Set(reasons.flatMap((reason) => reason.needs))];
  const { code } = reasons[0]!;
  const lack = code === 'garment-measure-missing' || code === 'no-shape-joins' ? code : null;
  const message: CheckMessage = {
    code: codeOf(rule, isComfort(rule, d), v, d),
    params: { finding: 'not-known', needs, lack: needs.length > 0 ? null : lack },
  };
  return { check: rule.check, verdict: 'unknown', ...message, needs };
}

function verdictOf(rule: CheckRule, margin: number, chance: number, d: Decisions): Found {
  if (margin < 0) {
    if (rule.stretches(d) && !d.mainMeasured) return 'unknown';
    return isComfort(rule, d) ? 'tight' : 'fails';
  }
  return isSmall(chance, d) ? 'fine' : 'tight';
}
