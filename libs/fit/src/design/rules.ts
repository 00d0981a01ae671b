import { fitError } from './fit-errors.ts';
import rulesJson from './rules.json' with { type: 'json' };

/** One number of the model that a maker can see and override. `source` names the publication, or says practice, from memory or assumed. */
export interface Rule {
  readonly name: RuleName;
  readonly value: number;
  /** mm, or 1 for a share. */
  readonly unit: string;
  /** What a child's size does to it: nothing, times κ (`size`), times (1 + κ)/2 (`half`). */
  readonly scale: string;
  readonly source: string;
  /** Limits of an override. */
  readonly min: number;
  readonly max: number;
}

export type RuleName = keyof typeof rulesJson;
export type Rules = Readonly<Record<RuleName, number>>;

/** Changes whenever a rule's value, or what is done with it, does. Kept with every sheet. */
export const RULES_VERSION = '2';

/** The rule table, in the order of the road: ease, girths, armholes, lengths, necks, constructions, checks. */
export const RULES: readonly Rule[] = Object.entries(rulesJson).map(([name, rule]) => ({
  name: name as RuleName,
  ...rule,
}));

const DEFAULTS: Rules = Object.fromEntries(RULES.map((rule) => [rule.name, rule.value])) as Rules;

/**
 * The rules with a maker's own numbers in their place.
 * @throws DomainError `rule-unknown` or `rule-out-of-range`, its pointer the rule's name.
 */
export function rulesWith(overrides: Readonly<Record<string, number>>): Rules {
  const names = Object.keys(overrides);
  if (names.length === 0) return DEFAULTS;
  const rules: Record<string, number> = { ...DEFAULTS };
  for (const name of names) {
    const rule = RULES.find((each) => each.name === name);
    if (!rule) throw fitError('rule-unknown', { name }, `/${name}`);
    const value = overrides[name]!;
    const { min, max, unit } = rule;
    if (!(value >= min && value <= max))
      throw fitError('rule-out-of-range', { name, value, min, max, unit }, `/${name}`);
    rules[name] = value;
  }
  for (const to of Object.keys(rules)) {
    const from = to.replace(/-to$/, '-from');
    if (from === to || !(rules[from]! > rules[to]!)) continue;
    const name = names.includes(from) ? from : to;
    throw fitError('rule-out-of-range', { from, to, fromValue: rules[from]!, toValue: rules[to]! }, `/${name}`);
  }
  return rules as Rules;
}

/** Where a rule's number is from, for a sheet's `because`. */
export function ruleSource(name: RuleName): string {
  return rulesJson[name].source;
}
