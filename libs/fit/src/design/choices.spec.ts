import { describe, expect, it } from 'vitest';
import { requestOf } from '../../../../tests/support/fit-samples.ts';
import { keyOf, type Choices } from './choices.ts';
import { compute } from '../evaluation/compute.ts';
import { RULES, rulesWith, type Rules } from './rules.ts';

const CHOICES = compute(requestOf()).choices;
const withRules = (rules: Rules): Choices => ({ ...CHOICES, rules });

/** Every record that differs from one in a single field of it, at any depth, with the field's name. */
function variants(record: object): (readonly [field: string, changed: object])[] {
  return Object.entries(record).flatMap(([field, value]: [string, unknown]) =>
    typeof value === 'object' && value !== null
      ? variants(value).map(([inner, changed]) => [`${field}.${inner}`, { ...record, [field]: changed }] as const)
      : [[field, { ...record, [field]: another(value) }] as const],
  );
}

function another(value: unknown): unknown {
  if (typeof value === 'boolean') return !value;
  return typeof value === 'number' ? value + 0.25 : `${String(value)} and more`;
}

describe('the key of choices', () => {
  it('is the same for equal ones', () => {
    expect(keyOf(structuredClone(CHOICES))).toBe(keyOf(CHOICES));
    expect(keyOf(compute(requestOf()).choices)).toBe(keyOf(CHOICES));
  });

  it('is the same whatever the sizes', () => {
    const [some, more] = [60, 71].map((ribMm) => keyOf(compute(requestOf({ design: { ribMm } })).choices));
    expect(some).toBe(more);
    expect(some).not.toBe(keyOf(CHOICES));
  });

  it('is another for each field that differs', () => {
    const { rules, ...rest } = CHOICES;
    const changed = variants(rest);
    expect(changed.map(([field]) => field)).toContain('made.frontToUnderarm');
    const keys = [rest, ...changed.map(([, each]) => each)].map((each) => keyOf({ ...each, rules } as Choices));
    expect(new Set(keys).size).toBe(changed.length + 1);
  });
});

describe('rules that a maker overrides', () => {
  it('make another key, each its own', () => {
    const overridden = RULES.map(({ name, value, min, max }) =>
      keyOf(withRules({ ...CHOICES.rules, [name]: value === max ? min : max })),
    );
    expect(new Set([keyOf(CHOICES), ...overridden]).size).toBe(RULES.length + 1);
  });

  it('make another key for another number', () => {
    const [some, more] = [0.2, 0.3].map((share) => keyOf(withRules(rulesWith({ 'wrist-ease': share }))));
    expect(some).not.toBe(more);
  });

  it('make the same key in another table, and none where they are as they were', () => {
    const again = [1, 2].map(() => keyOf(withRules(rulesWith({ 'wrist-ease': 0.2 }))));
    expect(again[0]).toBe(again[1]);
    expect(keyOf(withRules(rulesWith({ 'wrist-ease': CHOICES.rules['wrist-ease'] })))).toBe(keyOf(CHOICES));
  });
});
