import { describe, expect, it } from 'vitest';
import { minus, unknown } from '#measure';
import { requestOf } from '../../../../tests/support/fit-samples.ts';
import { rulesWith } from '../design/rules.ts';
import { compute } from '../evaluation/compute.ts';
import type { CheckRule, TracedCheck } from './check.ts';
import { hip } from './hip.ts';
import { chanceOfFailing, isSure, marginOf, uncertaintyWithMaking } from './judge.ts';
import { negativeEase } from './negative-ease.ts';
import { sleeveTaper } from './sleeve-taper.ts';

const RULES = rulesWith({});
const CHOICES = compute(requestOf()).choices;

/** A check of these numbers. */
function checkOf(rule: CheckRule, need: number, have: number) {
  const [needed, there] = [unknown(), unknown()];
  const traced: TracedCheck = { rule, need: needed, have: there, margin: minus(there, needed) };
  const v = (of: unknown): number => (of === needed ? need : of === there ? have : have - need);
  return { traced, v };
}

describe('a margin', () => {
  it('is what a check has to spare', () => {
    const { traced, v } = checkOf(hip, 990, 1003);
    expect(marginOf(traced, v)).toBe(13);
  });

  it('of what rounding leaves of nothing is nothing, on either side', () => {
    for (const rest of [5e-10, -5e-10]) {
      const { traced } = checkOf(hip, 0, 0);
      expect(marginOf(traced, () => rest)).toBe(0);
    }
    expect(marginOf(checkOf(hip, 0, 0).traced, () => -2e-9)).toBe(-2e-9);
  });

  it('that is not known is NaN', () => {
    const { traced, v } = checkOf(hip, NaN, 1003);
    expect(marginOf(traced, v)).toBeNaN();
  });
});

describe('the chance of failing', () => {
  /** Φ(0) = ½, Φ(−1.6449) = 0.05, Φ(1) = 0.8413: the standard normal table. */
  it('is that of a normal margin', () => {
    expect(chanceOfFailing(0, 4)).toBeCloseTo(0.5, 9);
    expect(chanceOfFailing(1.6449 * 4, 4)).toBeCloseTo(0.05, 4);
    expect(chanceOfFailing(-4, 4)).toBeCloseTo(0.8413, 4);
  });

  it('is all or none where nothing is uncertain', () => {
    expect([chanceOfFailing(-0.1, 0), chanceOfFailing(0, 0), chanceOfFailing(0.1, 0)]).toEqual([1, 0, 0]);
  });
});

describe('the uncertainty of a margin', () => {
  it('of a girth has a hundredth of what there is for the making', () => {
    const { traced, v } = checkOf(hip, 990, 1000);
    expect(uncertaintyWithMaking(traced, 24, v, RULES)).toBeCloseTo(26, 9);
  });

  it('of a stretch has a hundredth of what the fabric is pulled to', () => {
    const { traced, v } = checkOf(negativeEase, 0.2, 0.5);
    expect(uncertaintyWithMaking(traced, 0.016, v, RULES)).toBeCloseTo(0.02, 9);
  });

  it('of a length has none', () => {
    const { traced, v } = checkOf(sleeveTaper, 0.2, 0.5);
    expect(uncertaintyWithMaking(traced, 0.016, v, RULES)).toBe(0.016);
  });
});

/** A girth of 1000 whose measures are exact: u = 10, so that 16.45 leave a chance of 0.05. */
describe('a check', () => {
  const sure = (margin: number, rules = RULES): boolean => {
    const { traced, v } = checkOf(hip, 1000 - margin, 1000);
    return isSure(margin, traced, 0, v, { ...CHOICES, rules });
  };

  it('is sure from a chance of failing of one in twenty on', () => {
    expect([sure(16.4), sure(16.5)]).toEqual([false, true]);
  });

  it('is sure earlier where the rules take a greater chance', () => {
    expect(sure(13, rulesWith({ 'tight-chance': 0.1 }))).toBe(true);
  });

  /** A ratio with u = 0.1: Φ(−0.6745) = 0.25 of the standard normal table. */
  it('of comfort is sure from one in four on', () => {
    const comfortable = (margin: number): boolean => {
      const { traced, v } = checkOf(sleeveTaper, 0.5 - margin, 0.5);
      return isSure(margin, traced, 0.1, v, CHOICES);
    };
    expect([comfortable(0.0674), comfortable(0.0675)]).toEqual([false, true]);
  });
});
