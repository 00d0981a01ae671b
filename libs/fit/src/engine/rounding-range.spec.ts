import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bySign, constant, hypot, minus, plus, sqrt, times, unknown, type Quantity } from '#measure';
import { Evaluation } from './evaluation.ts';
import { Layout } from './layout.ts';
import { NO_MARGIN, roundingRange, type Leeway } from './rounding-range.ts';

const X = unknown();
const Y = unknown();
/** The number that is rounded. */
const R = plus(X);
const WANTED: Leeway = { down: -30, up: 30 };

function evaluate(constraints: readonly Quantity[], x: number): Evaluation {
  const layout = new Layout({
    inputs: [X],
    named: [R],
    rounded: [R],
    outputs: [],
    solved: [],
    sheet: [R],
    constraints,
  });
  return new Evaluation(layout, [x], { u: [0], row: [-1], covariance: [] });
}

/** The range of a number that is `x`, where all constraints count that hold at it. */
function rangeOf(constraints: readonly Quantity[], x: number, wanted: Leeway = WANTED): Leeway {
  const evaluation = evaluate(constraints, x);
  const holding = constraints.filter((each) => evaluation.value(each) > -NO_MARGIN);
  return roundingRange(R, wanted, evaluation, new Set(holding));
}

/** At most, and at least, so large. */
const below = (most: number): Quantity => minus(constant(most), R);
const above = (least: number): Quantity => minus(R, constant(least));
/** The same quantity by an operation, which cannot be seen to be in proportion. */
const bent = (of: Quantity): Quantity => bySign(of, 1, 1);

describe('a rounding range', () => {
  it('is as wide as wanted where nothing limits it', () => {
    expect(rangeOf([], 100)).toEqual(WANTED);
    expect(rangeOf([below(200), above(0)], 100)).toEqual(WANTED);
  });

  /** 100 between 88 and 105.5; a limit of twice the number of 2·100 ≤ 208 leaves 4. */
  it('ends where a constraint does', () => {
    expect(rangeOf([below(105.5), above(88)], 100)).toEqual({ down: -12, up: 5.5 });
    expect(rangeOf([minus(constant(208), times(2, R)), above(88)], 100)).toEqual({ down: -12, up: 4 });
  });

  /** √((r − 90)² + 12²) ≤ 20 holds for r − 90 ≤ 16: from 100 up 6, and down 26. */
  it('ends where a constraint does that is not in proportion', () => {
    const near = minus(constant(20), hypot(minus(R, constant(90)), constant(12)));
    const { down, up } = rangeOf([near], 100);
    expect(up).toBeCloseTo(6, 6);
    expect(down).toBeCloseTo(-26, 6);
  });

  it('is none on the side where a constraint only just holds, and free on the other', () => {
    expect(rangeOf([below(100)], 100)).toEqual({ down: -30, up: 0 });
    const { down, up } = rangeOf([bent(below(100))], 100);
    expect(down).toBe(-30);
    expect(up).toBeCloseTo(0, 7);
  });

  /** √(9 − r) − 1 is not known beyond 9, and less than nothing beyond 8. */
  it('takes a constraint that becomes unknown for broken', () => {
    const constraint = minus(sqrt(minus(constant(9), R)), constant(1));
    expect(rangeOf([constraint], 5).up).toBeCloseTo(3, 6);
  });

  it('is drawn in by no constraint that does not hold', () => {
    expect(rangeOf([below(90)], 100)).toEqual(WANTED);
    expect(rangeOf([bent(below(90))], 100)).toEqual(WANTED);
  });

  it('is not searched on a side where nothing is wanted', () => {
    expect(rangeOf([bent(above(99))], 100, { down: 0, up: 10 })).toEqual({ down: 0, up: 10 });
  });
});

/** A number r of 100, one that follows it, 2r, at most 212, and a third that r may not exceed. */
describe('the range of a number that others follow', () => {
  const follower = times(2, R);
  const third = plus(Y);
  const constraints = [minus(constant(212), follower), minus(third, R)];
  const layout = new Layout({
    inputs: [X, Y],
    named: [],
    rounded: [R, third],
    outputs: [],
    solved: [],
    sheet: [R, follower, third],
    constraints,
  });
  const rangeFor = (of: Quantity, y: number): Leeway => {
    const evaluation = new Evaluation(layout, [100, y], { u: [0, 0], row: [-1, -1], covariance: [] });
    return roundingRange(of, WANTED, evaluation, new Set(constraints));
  };

  it('ends where its follower breaks a constraint', () => {
    expect(rangeFor(R, 150)).toEqual({ down: -30, up: 6 });
  });

  it('leaves every other number of the sheet as it is', () => {
    expect(rangeFor(R, 104)).toEqual({ down: -30, up: 4 });
    expect(rangeFor(third, 104)).toEqual({ down: -4, up: 30 });
  });
});

/** `a + b·r`, and `c − √((r − p)² + q²)`, both of which a number may enter in any way. */
const linear = fc
  .tuple(fc.integer({ min: -200, max: 200 }), fc.constantFrom(-2, -1, -0.5, 0.25, 1, 3))
  .map(([a, b]) => plus(constant(a + 0.5), times(b, R)));
const curved = fc
  .tuple(fc.integer({ min: 10, max: 120 }), fc.integer({ min: 0, max: 100 }), fc.integer({ min: 1, max: 40 }))
  .map(([c, p, q]) => minus(constant(c), hypot(minus(R, constant(p)), constant(q))));
const number = fc.double({ min: 0, max: 100, noNaN: true });

describe('any rounding range', () => {
  it('breaks no constraint that held', () => {
    const some = fc.array(fc.oneof(linear, curved, linear.map(bent)), { maxLength: 6 });
    fc.assert(
      fc.property(some, number, (constraints, x) => {
        const { down, up } = rangeOf(constraints, x);
        expect(down).toBeLessThanOrEqual(0);
        expect(up).toBeGreaterThanOrEqual(0);
        const before = evaluate(constraints, x);
        for (const share of [0.25, 0.5, 0.75, 1])
          for (const end of [down, up]) {
            const there = evaluate(constraints, x + share * end);
            for (const each of constraints)
              if (before.value(each) >= 0) expect(there.value(each)).toBeGreaterThan(-1e-8);
          }
      }),
      { numRuns: 300 },
    );
  });

  it('goes as far as wanted, or to where a constraint would break', () => {
    const some = fc.array(fc.oneof(linear, curved), { maxLength: 6 });
    fc.assert(
      fc.property(some, number, (constraints, x) => {
        const { down, up } = rangeOf(constraints, x);
        const before = evaluate(constraints, x);
        for (const [end, wanted] of [
          [down, WANTED.down],
          [up, WANTED.up],
        ] as const) {
          if (end === wanted) continue;
          const beyond = evaluate(constraints, x + end + Math.sign(wanted) * 1e-4);
          expect(constraints.some((each) => before.value(each) >= 0 && beyond.value(each) < 0)).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('is the same in closed form and by a search', () => {
    const some = fc.array(linear, { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(some, number, (constraints, x) => {
        const closed = rangeOf(constraints, x);
        const searched = rangeOf(constraints.map(bent), x);
        expect(searched.down).toBeCloseTo(closed.down, 6);
        expect(searched.up).toBeCloseTo(closed.up, 6);
      }),
      { numRuns: 300 },
    );
  });
});
