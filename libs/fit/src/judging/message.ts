import type { Verdict } from '../messages/advice.ts';
import type { CheckMessage } from '../messages/check-codes.ts';
import type { Cure } from '../messages/cure.ts';
import { NONE } from '../messages/none.ts';
import type { CheckRule, KnownGarment, Situation, TracedCheck } from '../checks/check.ts';

/** The verdict on a check whose numbers are known. */
export type KnownVerdict = Exclude<Verdict, 'n/a' | 'unknown'>;

/** What came of a check whose numbers are known: with what to change where it is short, or hardly not. */
export function messageOf(check: TracedCheck, verdict: 'fine', garment: KnownGarment): CheckMessage;
export function messageOf(check: TracedCheck, verdict: KnownVerdict, at: Situation): CheckMessage;
export function messageOf(check: TracedCheck, verdict: KnownVerdict, at: KnownGarment | Situation): CheckMessage {
  const { rule } = check;
  const { choices } = at;
  const code = rule.code?.(check, at) ?? rule.check;
  const usualStretch = rule.stretches(choices) && !choices.usable.mainMeasured ? choices.craft : null;
  if (verdict === 'fine' || !('margin' in at)) return { code, params: { finding: 'holds', usualStretch } };
  return {
    code,
    params: {
      finding: findingOf(verdict, at),
      usualStretch,
      marginMm: rule.saysMargin ? at.margin : null,
      of: rule.kind.startsWith('girth') ? 'girth' : 'length',
      uncertain: at.uncertain,
      cures: curesFor(rule, at),
      details: rule.details?.(at) ?? NONE,
    },
  } as CheckMessage;
}

function findingOf(verdict: Exclude<KnownVerdict, 'fine'>, { uncertain }: Situation) {
  if (verdict !== 'tight') return verdict;
  return uncertain === null ? 'barely' : 'uncertain';
}

/** Measuring comes before any change of the design, where it may do. */
function curesFor(rule: CheckRule, at: Situation): readonly Cure[] {
  if (at.uncertain === null) return rule.cures(at);
  return rule.measureFirst ? [rule.measureFirst] : ['measure-that', ...rule.cures(at)];
}
