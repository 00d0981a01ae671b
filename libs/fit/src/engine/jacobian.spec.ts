import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { constant, hypot, minus, plus, product, quotient, times, unknown, whereKnown, type Quantity } from '#measure';
import { graph, graphInputs } from '../../../../tests/support/random-graph.ts';
import { gradient } from './gradient.ts';
import { Jacobian, NONE } from './jacobian.ts';
import { Tape } from './tape.ts';

const A = unknown();
const B = unknown();
const C = unknown();

/** The derivatives of a quantity by some of a tape of three inputs. */
function derivativesOf(of: Quantity, by: readonly Quantity[], x: readonly number[]): number[] {
  const tape = new Tape([A, B, C], [of, ...by]);
  const jacobian = new Jacobian(
    tape,
    by.map((each) => tape.place(each)),
  );
  const derivatives = jacobian.evaluate(tape.partials(tape.evaluate(x)));
  return by.map((_, column) => derivatives[jacobian.place(tape.place(of), column)]!);
}

const STEP = 1e-5;

describe('the derivatives of any formula', () => {
  it('forwards, backwards and by central differences are the same', () => {
    fc.assert(
      fc.property(graph, graphInputs, ({ inputs, nodes }, x) => {
        const all = nodes.map(({ quantity }) => quantity);
        const tape = new Tape(inputs, all);
        const jacobian = new Jacobian(tape, [0, 1, 2]);
        const v = tape.evaluate(x);
        const forwards = jacobian.evaluate(tape.partials(v));
        for (const { quantity, plain } of nodes) {
          const place = tape.place(quantity);
          const backwards = gradient(tape, v, place);
          inputs.forEach((_, i) => {
            const moved = (by: number): number => plain(x.map((each, j) => (i === j ? each + by : each)));
            const derivative = forwards[jacobian.place(place, i)]!;
            expect(derivative).toBeCloseTo(backwards[i]!, 9);
            const difference = (moved(STEP) - moved(-STEP)) / (2 * STEP);
            expect(Math.abs(derivative - difference)).toBeLessThan(1e-4 * Math.max(1, Math.abs(derivative)));
          });
        }
      }),
      { numRuns: 200 },
    );
  });

  it('are the same where sums are folded', () => {
    fc.assert(
      fc.property(graph, graphInputs, ({ inputs, nodes }, x) => {
        const all = nodes.map(({ quantity }) => quantity);
        const last = all.at(-1)!;
        const [folded, full] = [[last], all].map((named) => {
          const tape = new Tape(inputs, named);
          return gradient(tape, tape.evaluate(x), tape.place(last));
        });
        folded!.forEach((each, i) => expect(each).toBeCloseTo(full![i]!, 9));
      }),
    );
  });
});

describe('a derivative by a quantity that is no input', () => {
  const sum = plus(A, B);

  /** (a + b)·a moves with the sum alone by a, though a changes with neither. */
  it('takes it to move by itself', () => {
    expect(derivativesOf(product(sum, A), [sum], [3, 4, 0])).toEqual([3]);
  });

  it('is 1 by itself, and none of what it is made from', () => {
    const tape = new Tape([A, B, C], [sum]);
    const jacobian = new Jacobian(tape, [tape.place(sum)]);
    expect(jacobian.evaluate([])[jacobian.place(tape.place(sum), 0)]).toBe(1);
    expect(jacobian.place(tape.place(A), 0)).toBe(NONE);
  });

  it('leaves the derivatives by the inputs as they are', () => {
    expect(derivativesOf(product(sum, A), [A, B, sum], [3, 4, 0])).toEqual([10, 3, 3]);
  });
});

describe('a derivative that is always zero', () => {
  it('has no place of its own', () => {
    const of = hypot(A, B);
    const tape = new Tape([A, B, C], [of]);
    const jacobian = new Jacobian(tape, [0, 1, 2]);
    expect(jacobian.place(tape.place(of), 2)).toBe(NONE);
    expect(jacobian.evaluate(tape.partials(tape.evaluate([3, 4, 5])))[NONE]).toBe(0);
  });
});

describe('a sum of sums', () => {
  /** 2(a − 3b) + a */
  it('has derivatives that no partial derivative is needed for', () => {
    const inner = minus(A, times(3, B));
    const outer = plus(times(2, inner), A);
    const tape = new Tape([A, B, C], [inner, outer]);
    const jacobian = new Jacobian(tape, [0, 1, 2]);
    const derivatives = jacobian.evaluate([]);
    expect([0, 1, 2].map((column) => derivatives[jacobian.place(tape.place(outer), column)])).toEqual([3, -6, 0]);
  });
});

describe('a derivative that is not known', () => {
  it('adds nothing to a quantity that does not count it', () => {
    const broken = quotient(C, constant(0));
    expect(derivativesOf(whereKnown(A, B, broken), [A, B, C], [1, 2, 3])).toEqual([0, 1, 0]);
    expect(derivativesOf(whereKnown(A, B, broken), [C], [NaN, 2, 3])).not.toEqual([0]);
  });
});
