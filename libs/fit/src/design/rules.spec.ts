import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '#measure';
import { RULES, rulesWith, ruleSource, type RuleName } from './rules.ts';

const refusal = (overrides: Record<string, number>): DomainError => {
  try {
    rulesWith(overrides);
  } catch (error) {
    if (error instanceof DomainError) return error;
  }
  throw new Error('It was not refused.');
};

describe('the rule table', () => {
  it.each(RULES.map((rule) => [rule.name, rule] as const))(
    '%s: says where it is from, and lies within its limits',
    (_, rule) => {
      expect(rule.source).not.toBe('');
      expect(rule.value).toBeGreaterThanOrEqual(rule.min);
      expect(rule.value).toBeLessThanOrEqual(rule.max);
      expect(['none', 'size', 'half']).toContain(rule.scale);
      expect(['mm', '1', 'g']).toContain(rule.unit);
    },
  );

  /** λ ends at 1 + ½κ: a child's neck grows by less for its head. */
  it('scales lengths only, and how much larger a neck grows: any other share is the same at every size', () => {
    const scaled = RULES.filter(({ unit, scale }) => unit === '1' && scale !== 'none');
    expect(scaled).toMatchObject([{ name: 'neck-widened-more', value: 0.5, scale: 'size' }]);
  });

  it('tells a rule’s source by its name', () => {
    expect(ruleSource('ordinary-thickness')).toBe('assumed');
  });
});

describe('rules with a maker’s own numbers', () => {
  it('are the table where she has none', () => {
    const rules = rulesWith({});
    for (const { name, value } of RULES) expect(rules[name as RuleName]).toBe(value);
  });

  it('change what she names, leave the rest, and leave the table', () => {
    expect(rulesWith({ 'band-depth': 40 })).toEqual({ ...rulesWith({}), 'band-depth': 40 });
    expect(rulesWith({})['band-depth']).toBe(25);
  });

  it('take any number within a rule’s limits, the ends included', () => {
    const table = rulesWith({});
    const override = fc
      .constantFrom(...RULES)
      // A band of ease does not end before it begins.
      .map(({ name, min, max }) => ({
        name,
        min: name.endsWith('-to') ? table[name.replace(/-to$/, '-from') as RuleName] : min,
        max: name.endsWith('-from') ? table[name.replace(/-from$/, '-to') as RuleName] : max,
      }))
      .chain(({ name, min, max }) => fc.tuple(fc.constant(name), fc.double({ min, max, noNaN: true })));
    fc.assert(
      fc.property(override, ([name, value]) => {
        expect(rulesWith({ [name]: value })[name as RuleName]).toBe(value);
      }),
    );
  });

  it.each([
    { overrides: { 'ease-classic-from': 150 }, pointer: '/ease-classic-from' },
    { overrides: { 'ease-classic-to': 20 }, pointer: '/ease-classic-to' },
    { overrides: { 'ease-close-from': 10, 'ease-close-to': 5 }, pointer: '/ease-close-from' },
  ])('refuse a band of ease that ends before it begins: $overrides', ({ overrides, pointer }) => {
    expect(refusal(overrides)).toMatchObject({ code: 'rule-out-of-range', pointer });
    expect(() => rulesWith({ 'ease-close-from': 5, 'ease-close-to': 10 })).not.toThrow();
  });

  it.each(['no-such-rule', 'constructor', 'toString', ''])('refuse a rule "%s"', (name) => {
    expect(refusal({ [name]: 1 })).toMatchObject({ code: 'rule-unknown', pointer: `/${name}` });
  });

  it('refuse a rule named as every object’s prototype', () => {
    expect(refusal(JSON.parse('{"__proto__": 1}')).code).toBe('rule-unknown');
  });

  it.each([-1, 151, NaN, Infinity])('refuse a band depth of %d, with what it takes', (value) => {
    const error = refusal({ 'band-depth': value });
    expect(error).toMatchObject({ code: 'rule-out-of-range', pointer: '/band-depth' });
    expect(error.params).toEqual({ name: 'band-depth', value, min: 0, max: 150, unit: 'mm' });
  });
});
