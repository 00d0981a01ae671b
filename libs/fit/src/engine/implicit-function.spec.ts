import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { min, minus, plus, product, root, rootWithin, times, unknown, type Quantity } from '#measure';
import { implicitFunction } from './implicit-function.ts';
import { Tape } from './tape.ts';

const S = unknown();
const T = unknown();

/** A root as a function of what its residual takes besides. */
function functionOf(of: Quantity) {
  if (of.kind !== 'root') throw new Error('It is no root.');
  return implicitFunction(of, (inputs, named) => new Tape(inputs, named));
}

/** Its value and its partial derivatives for some of them. */
function at(of: Quantity, ...given: readonly number[]) {
  const { operation } = functionOf(of);
  const value = operation.value(given);
  return { value, partials: operation.partials(given, value) };
}

/** x² = s */
const square = root(0, 1000, (x) => minus(product(x, x), S));

describe('a root', () => {
  it('of x² = s is √s, and moves by 1/(2√s)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 900_000, noNaN: true }), (s) => {
        const { value, partials } = at(square, s);
        expect(value / Math.sqrt(s)).toBeCloseTo(1, 9);
        expect(partials[0]! * 2 * Math.sqrt(s)).toBeCloseTo(1, 9);
      }),
    );
  });

  /** x·s = t: x = t/s, ∂x/∂s = −t/s², ∂x/∂t = 1/s. */
  it('moves with each quantity that its residual takes', () => {
    const { value, partials } = at(
      root(0, 1000, (x) => minus(product(x, S), T)),
      4,
      10,
    );
    expect([value, ...partials]).toEqual([2.5, -0.625, 0.25].map((each) => expect.closeTo(each, 9)));
  });

  it('takes the largest parts of its residual that do not depend on it, each once', () => {
    const sum = plus(S, T);
    const { sources } = functionOf(root(0, 9, (x) => minus(product(x, sum), product(x, min(sum, S)), sum)));
    expect(sources).toHaveLength(2);
    expect(sources[0]).toBe(sum);
    expect(sources[1]).toMatchObject({ kind: 'applied' });
  });

  it('is not known where its residual has no zero, or is not known', () => {
    expect(at(square, -1).value).toBeNaN();
    expect(at(square, 2_000_000).value).toBeNaN();
    expect(at(square, NaN).value).toBeNaN();
  });

  /** y = x + s within x: y = 3 leaves x = 3 − s. */
  it('may stand within the residual of another', () => {
    const outer = root(-10, 10, (x) =>
      minus(
        root(-100, 100, (y) => minus(y, plus(x, S))),
        times(1, T),
      ),
    );
    const tape = new Tape([S, T], [outer]);
    const v = tape.evaluate([1.25, 3]);
    expect(v[tape.place(outer)]).toBeCloseTo(1.75, 9);
    const start = tape.start(tape.place(outer));
    const ofS = tape.sources(tape.place(outer)).indexOf(0);
    expect(tape.partials(v)[start + ofS]).toBeCloseTo(-1, 9);
  });
});

describe('a root that is kept within its ends', () => {
  const kept = rootWithin(1, 2, (x) => minus(x, S));

  it('moves with its sources between them', () => {
    expect(at(kept, 1.5)).toEqual({ value: expect.closeTo(1.5, 12), partials: [expect.closeTo(1, 12)] });
  });

  it('is the nearer end beyond them, and does not move', () => {
    expect(at(kept, 0.5)).toEqual({ value: 1, partials: [0] });
    expect(at(kept, 2.5)).toEqual({ value: 2, partials: [0] });
  });

  it('does not move at the end itself', () => {
    expect(at(kept, 1)).toEqual({ value: 1, partials: [0] });
    expect(at(kept, 2)).toEqual({ value: 2, partials: [0] });
  });

  it('is not known where a source is not', () => {
    expect(at(kept, NaN).value).toBeNaN();
  });
});
