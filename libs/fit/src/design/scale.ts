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

const namesOf = (scale: 'size' | 'half'): RuleName[] =>
  RULES.filter((rule) => rule.scale === scale).map((rule) => rule.name as RuleName);

const BY_SIZE = namesOf('size');
const BY_HALF = namesOf('half');

/** The rules' numbers at a size: each times κ, times κ½, or as it is. */
export function rulesAtSize(rules: Rules, kappa: number): Rules {
  if (kappa === 1) return rules;
  const sized: Record<RuleName, number> = { ...rules };
  for (const name of BY_SIZE) sized[name] *= kappa;
  for (const name of BY_HALF) sized[name] *= (1 + kappa) / 2;
  return sized;
}
