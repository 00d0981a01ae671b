import { describe, expect, it } from 'vitest';
import { unknown } from '#measure';
import { rulesWith } from '../design/rules.ts';
import { Layout } from '../engine/index.ts';
import { withSafety } from './safety.ts';

const NEED = unknown();
const U = unknown();
const RULES = rulesWith({});

function safely(need: number, u: number): number {
  const made = withSafety(NEED, U, RULES);
  const { tape } = new Layout({
    inputs: [NEED, U],
    named: [made],
    rounded: [],
    outputs: [],
    solved: [],
    sheet: [],
    constraints: [],
  });
  return tape.evaluate([need, u])[tape.place(made)]!;
}

/** r(need) = max(1.02 need, need + 1.75 √(u² + (0.01 need)²)). */
describe('what is made for a head or a hand', () => {
  /** Sure, 1.75 × 0.01 is less than 0.02. */
  it('is 2 % more than one that is sure', () => {
    expect(safely(561, 0)).toBeCloseTo(572.22, 9);
  });

  /** √(8² + 6²) = 10 at a need of 600: 617.5 against 612. */
  it('is more where it is less sure', () => {
    expect(safely(600, 8)).toBeCloseTo(617.5, 9);
  });

  /** 1.75 √(u² + 0.0001 need²) = 0.02 need at u = 0.00553 need: below it the share counts. */
  it('changes from the one to the other without a step', () => {
    const u = 1000 * Math.sqrt((0.02 / 1.75) ** 2 - 0.01 ** 2);
    expect(safely(1000, u)).toBeCloseTo(1020, 6);
    expect(safely(1000, u - 1)).toBeCloseTo(1020, 9);
    expect(safely(1000, u + 1)).toBeGreaterThan(1020.5);
  });

  it('is not known where the need is not', () => {
    expect(safely(NaN, 1)).toBeNaN();
  });
});
