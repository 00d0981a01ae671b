import type { Verdict } from '../messages/advice.ts';
import type { CheckMessage } from '../messages/check-codes.ts';
import type { Cure } from '../messages/cure.ts';
import { NONE } from '../messages/none.ts';
import type { CheckRule, KnownGarment, Situation, TracedCheck } from '../checks/check.ts';

/** What came of a check whose numbers are known: with what to change, or for `unknown` how to know the fabric. */
export function messageOf(check: TracedCheck, verdict: 'fine', garment: KnownGarment): CheckMessage;
export function messageOf(check: TracedCheck, verdict: Exclude<Verdict, 'n/a'>, at: Situation): CheckMessage;
export function messageOf(
  check: TracedCheck,
  verdict: Exclude<Verdict, 'n/a'>,
  at: KnownGarment | Situation,
): CheckMessage {
  const { rule } = check;
  const code = rule.code?.(check, at) ?? rule.check;
  if (verdict === 'fine' || !('margin' in at)) return { code, params: { finding: 'holds' } };
  return {
    code,
    params: {
      finding: findingOf(verdict, at),
      marginMm: rule.saysMargin ? at.margin : null,
      of: rule.kind === 'girth' ? 'girth' : 'length',
      uncertain: at.uncertain,
      cures: verdict === 'unknown' ? ['measure-stretch'] : curesFor(rule, at),
      details: rule.details?.(at) ?? NONE,
    },
  } as CheckMessage;
}

function findingOf(verdict: Exclude<Verdict, 'n/a' | 'fine'>, { margin, uncertain }: Situation) {
  if (verdict === 'unknown') return 'unless-it-stretches';
  if (margin < 0) return 'fails';
  return uncertain === null ? 'barely' : 'uncertain';
}

/** Measuring comes before any change of the design, where it may do. */
function curesFor(rule: CheckRule, at: Situation): readonly Cure[] {
  if (at.uncertain === null) return rule.cures(at);
  return rule.measureFirst ? [rule.measureFirst] : ['measure-that', ...rule.cures(at)];
}
