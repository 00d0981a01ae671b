import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { constant, hypot, max, minus, plus, product, quotient, times, unknown, type Quantity } from '#measure';
import { graph, graphInputs } from '../../../../tests/support/random-graph.ts';
import { Tape } from './tape.ts';

const A = unknown();
const B = unknown();

/** The value of a quantity that is laid out alone. */
function valueOf(of: Quantity, a: number, b: number): number {
  const tape = new Tape([A, B], [of]);
  return tape.evaluate([a, b])[tape.place(of)]!;
}

describe('a tape', () => {
  it('evaluates any formula as plain arithmetic does', () => {
    fc.assert(
      fc.property(graph, graphInputs, ({ inputs, nodes }, x) => {
        const { quantity, plain } = nodes.at(-1)!;
        const tape = new Tape(inputs, [quantity]);
        expect(tape.evaluate(x)[tape.place(quantity)]).toBeCloseTo(plain(x), 6);
      }),
      { numRuns: 300 },
    );
  });

  it('has the same values, all quantities named or one', () => {
    fc.assert(
      fc.property(graph, graphInputs, ({ inputs, nodes }, x) => {
        const all = nodes.map(({ quantity }) => quantity);
        const last = all.at(-1)!;
        const folded = new Tape(inputs, [last]);
        const full = new Tape(inputs, all);
        expect(folded.size).toBeLessThanOrEqual(full.size);
        expect(folded.evaluate(x)[folded.place(last)]).toBeCloseTo(full.evaluate(x)[full.place(last)]!, 6);
      }),
    );
  });

  it('puts inputs first and sources before what takes them', () => {
    fc.assert(
      fc.property(graph, ({ inputs, nodes }) => {
        const tape = new Tape(
          inputs,
          nodes.map(({ quantity }) => quantity),
        );
        inputs.forEach((input, place) => expect(tape.place(input)).toBe(place));
        for (let place = 0; place < tape.size; place++)
          for (const source of tape.sources(place)) expect(source).toBeLessThan(place);
      }),
    );
  });

  it('refuses a formula of an input that it was not given', () => {
    expect(() => new Tape([A], [plus(A, B)])).toThrow('Unknown input.');
  });
});

describe('a sum within a sum', () => {
  /** 2(a + 3) − 0.5(b − (a + 3)) = 2.5a − 0.5b + 7.5 */
  const inner = plus(A, constant(3));
  const outer = minus(times(2, inner), times(0.5, minus(B, inner)));

  it('is folded into it where nothing names it: one place, each source once', () => {
    const tape = new Tape([A, B], [outer]);
    expect(tape.size).toBe(3);
    expect(tape.sources(2)).toEqual([0, 1]);
    expect([tape.factor(0), tape.factor(1)]).toEqual([2.5, -0.5]);
    expect(tape.evaluate([10, 4])[2]).toBe(30.5);
  });

  it('has a place of its own where it is named', () => {
    const tape = new Tape([A, B], [inner, outer]);
    expect(tape.size).toBe(4);
    expect(tape.evaluate([10, 4])).toEqual([10, 4, 13, 30.5]);
  });

  it('has one wherever it stands among those that are named', () => {
    const tape = new Tape([A, B], [outer, inner]);
    expect(tape.sources(tape.place(outer))).toEqual([tape.place(inner), 1]);
  });

  it('has one where an operation takes it', () => {
    const tape = new Tape([A, B], [product(inner, inner)]);
    expect(tape.size).toBe(4);
    expect(tape.evaluate([10, 4])[3]).toBe(169);
  });
});

describe('a quantity that two others take', () => {
  it('is laid out once', () => {
    const shared = hypot(A, B);
    const tape = new Tape([A, B], [product(shared, A), max(shared, B)]);
    expect(tape.size).toBe(5);
  });
});

describe('a number that is not known', () => {
  it('makes unknown what follows from it, and nothing else', () => {
    expect(valueOf(plus(A, B), NaN, 1)).toBeNaN();
    expect(valueOf(times(2, B), NaN, 1)).toBe(2);
    expect(valueOf(plus(B, times(0, A)), NaN, 1)).toBe(1);
  });
});

describe('places evaluated again', () => {
  it('are those that are given, from the values as they stand', () => {
    const sum = plus(A, B);
    const square = product(sum, sum);
    const double = times(2, sum);
    const tape = new Tape([A, B], [sum, square, double]);
    const v = tape.evaluate([1, 2]);
    v[tape.place(sum)] = 10;
    tape.evaluateAgain(v, [tape.place(square)]);
    expect([v[tape.place(square)], v[tape.place(double)]]).toEqual([100, 6]);
  });
});

describe('the partial derivatives of a tape', () => {
  it('are those of each place by its own sources, for the values given', () => {
    const ratio = quotient(A, B);
    const sum = minus(ratio, times(3, A));
    const tape = new Tape([A, B], [ratio, sum]);
    const partials = tape.partials(tape.evaluate([6, 2]));
    const at = (of: Quantity, source: number): number => partials[tape.start(tape.place(of)) + source]!;
    expect([at(ratio, 0), at(ratio, 1)]).toEqual([0.5, -1.5]);
    expect([at(sum, 0), at(sum, 1)]).toEqual([1, -3]);
  });
});
