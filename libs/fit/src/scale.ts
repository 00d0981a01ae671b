import type { BodyProfile } from '#body';
import { RULES, type RuleName, type Rules } from './rules.ts';

/**
 * κ: how far a child's or baby's constants shrink, `min(1, chest/920)`; 1 for adults. NaN for a child whose chest is not known.
 * Source: assumed (the trade: wearing ease hardly depends on size).
 */
export function kappaOf(body: BodyProfile | null, rules: Rules): number {
  if (body?.figure !== 'child' && body?.figure !== 'baby') return 1;
  const chest = body.values['chest-girth']?.value ?? NaN;
  return Math.min(1, chest / rules['adult-chest']);
}

const SCALE_OF = new Map(RULES.map((rule) => [rule.name, rule.scale]));

/** A rule's number at this size. */
export function scaled(name: RuleName, rules: Rules, kappa: number): number {
  const scale = SCALE_OF.get(name);
  if (scale === 'size') return rules[name] * kappa;
  if (scale === 'half') return (rules[name] * (1 + kappa)) / 2;
  return rules[name];
}
