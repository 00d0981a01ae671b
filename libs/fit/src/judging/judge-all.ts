import type { BodyDimension } from '#body';
import type { Check, CheckName } from '../messages/advice.ts';
import type { Computed } from '../evaluation/compute.ts';
import type { CheckMessage } from '../messages/check-codes.ts';
import type { MissingMeasures } from '../evaluation/missing.ts';
import { easeThatHelps } from '../remedies/ease-that-helps.ts';
import { Search } from '../remedies/search.ts';
import type { CheckRule, FoundRemedy, KnownGarment, Situation, TracedCheck } from '../checks/check.ts';
import { chanceOfFailing, isSure, marginOf, uncertaintyWithMaking } from '../checks/judge.ts';
import { type KnownVerdict, messageOf } from './message.ts';
import { uncertainMeasure } from './uncertain-measure.ts';

/** A check with what came of it. */
interface Judged {
  readonly rule: CheckRule;
  readonly check: Check;
}

/** Judges every check of a sheet. Uncertainties include correlation and, for girths, the making. */
export function judgeAll(computed: Computed, missing: () => MissingMeasures): Judged[] {
  const judged: Judged[] = [];
  for (const { rule, traced } of computed.model.checks)
    judged.push({ rule, check: judgeOne(rule, traced, computed, missing, judged) });
  return judged;
}

function judgeOne(
  rule: CheckRule,
  traced: TracedCheck | null,
  computed: Computed,
  missing: () => MissingMeasures,
  before: readonly Judged[],
): Check {
  const { choices, evaluation } = computed;
  const v = evaluation.value;
  const { check } = rule;
  const comfort = rule.comfort(choices);
  if (traced === null || !rule.applies(choices, v(traced.need)))
    return { check, comfort, verdict: 'n/a', code: check, params: { finding: 'does-not-apply' } } as Check;
  const known = knownGarment(computed);
  const [need, have, margin] = [v(traced.need), v(traced.have), marginOf(traced, v)];
  if (Number.isNaN(margin)) return unknown(traced, known, missing());
  const measured = evaluation.judgedUncertainty(traced.margin);
  const u = uncertaintyWithMaking(traced, measured, v, choices.rules);
  const chance = chanceOfFailing(margin, u);
  const verdict = verdictOf(traced, measured, known);
  if (verdict === 'fine') {
    const { code, params } = messageOf(traced, verdict, known);
    return { check, comfort, verdict, need, have, margin, u, chanceOfFailing: chance, code, params } as Check;
  }
  const remedies = remediesFor(traced, measured, computed, known);
  const uncertain = verdict === 'tight' && margin >= 0 ? uncertainMeasure(traced, measured, computed) : null;
  const situation: Situation = {
    ...known,
    limits: traced,
    margin,
    ease: easeThatHelps(traced, evaluation),
    uncertain,
    offered: (field) => remedies.some(({ change }) => field in change),
    isFine: (name) => before.some((each) => each.check.check === name && each.check.verdict === 'fine'),
    marginOf: (name) => marginByName(name, computed),
  };
  const { code, params } = messageOf(traced, verdict, situation);
  return {
    check,
    comfort,
    verdict,
    need,
    have,
    margin,
    u,
    chanceOfFailing: chance,
    code,
    params,
    ...(uncertain !== null && { needs: [uncertain] }),
    ...(remedies.length > 0 && { remedies: remedies.map(({ message, change }) => ({ ...message, change })) }),
  } as Check;
}

/** What the checks may say of a garment. */
const knownGarment = ({ choices, model, wearer, kappa, numbers, evaluation }: Computed): KnownGarment => ({
  choices,
  garment: model.garment,
  figure: wearer.figure,
  kappa,
  values: numbers.values,
  v: evaluation.value,
});

function verdictOf(check: TracedCheck, measured: number, { choices, v }: KnownGarment): KnownVerdict {
  const margin = marginOf(check, v);
  if (margin >= 0) return isSure(margin, check, measured, v, choices) ? 'fine' : 'tight';
  return check.rule.comfort(choices) ? 'poor' : 'fails';
}

/** Those first that spoil nothing else. */
function remediesFor(check: TracedCheck, measured: number, computed: Computed, known: KnownGarment): FoundRemedy[] {
  const found = check.rule.remedies?.(new Search(check, measured, computed, known)) ?? [];
  return found.toSorted((a, b) => a.spoilt - b.spoilt);
}

function marginByName(name: CheckName, { model, evaluation }: Computed): number {
  const found = model.checks.find(({ rule }) => rule.check === name)?.traced ?? null;
  return found === null ? NaN : marginOf(found, evaluation.value);
}

/** A check whose numbers are not all known: what to measure. */
function unknown(check: TracedCheck, known: KnownGarment, missing: MissingMeasures): Check {
  const reasons = [check.need, check.have]
    .filter((each) => Number.isNaN(known.v(each)))
    .map((each) => missing.reasonFor(each));
  const needs: BodyDimension[] = [...new Set(reasons.flatMap((reason) => reason.needs))];
  const { code } = reasons[0]!;
  const lack = code === 'garment-measure-missing' || code === 'no-shape-joins' ? code : null;
  const message: CheckMessage = {
    code: check.rule.code?.(check, known) ?? check.rule.check,
    params: { finding: 'not-known', needs, lack: needs.length > 0 ? null : lack },
  };
  return {
    check: check.rule.check,
    comfort: check.rule.comfort(known.choices),
    verdict: 'unknown',
    ...message,
    needs,
  } as Check;
}
