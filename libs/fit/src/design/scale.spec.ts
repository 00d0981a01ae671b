import { describe, expect, it } from 'vitest';
import { bodyOf } from '../../../../tests/support/fit-samples.ts';
import { rulesWith } from './rules.ts';
import { kappaOf, rulesAtSize } from './scale.ts';

const RULES = rulesWith({});

describe('κ', () => {
  it.each(['woman', 'man', 'unsaid'] as const)('is 1 for any %s', (figure) => {
    expect(kappaOf(bodyOf({ 'chest-girth': 700 }, figure), RULES)).toBe(1);
  });

  /** 25 in of a six-year-old: 635/920. */
  it('is chest/920 for a child or baby, at most 1', () => {
    expect(kappaOf(bodyOf({ 'chest-girth': 635 }, 'child'), RULES)).toBeCloseTo(0.6902, 4);
    expect(kappaOf(bodyOf({ 'chest-girth': 460 }, 'baby'), RULES)).toBe(0.5);
    expect(kappaOf(bodyOf({ 'chest-girth': 1000 }, 'child'), RULES)).toBe(1);
  });

  it('is not known of a child without a chest, and 1 where nobody is measured', () => {
    expect(kappaOf(bodyOf({}, 'child'), RULES)).toBeNaN();
    expect(kappaOf(null, RULES)).toBe(1);
  });
});

describe('a rule’s number', () => {
  it.each([
    ['shoulder-least', 15],
    ['band-depth', 18.75],
    ['ordinary-thickness', 3],
  ] as const)('%s at κ = ½: times κ, times κ½ = ¾, or as it is', (name, expected) => {
    expect(rulesAtSize(RULES, 0.5)[name]).toBe(expected);
  });
});
