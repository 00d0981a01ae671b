import { describe, expect, it } from 'vitest';
import { constant, min, minus, plus, product, quotient, unknown, whereKnown, type Quantity } from '#measure';
import { gradient } from './gradient.ts';
import { Tape } from './tape.ts';

const X = unknown();
const Y = unknown();
const Z = unknown();

function gradientOf(of: Quantity, x: readonly number[]): readonly number[] {
  const tape = new Tape([X, Y, Z], [of]);
  return gradient(tape, tape.evaluate(x), tape.place(of));
}

describe('the gradient', () => {
  /** f = xy + min(x, z) at (2, 3, 5): ∂x = y + 1, ∂y = x, ∂z = 0; at (5, 3, 2) the smaller is z. */
  it('adds up all ways by which an input enters', () => {
    const f = plus(product(X, Y), min(X, Z));
    expect(gradientOf(f, [2, 3, 5])).toEqual([4, 2, 0]);
    expect(gradientOf(f, [5, 3, 2])).toEqual([3, 5, 1]);
  });

  /** f = s² for s = x − y: 2s, −2s. */
  it('goes through a quantity that is taken twice', () => {
    const s = minus(X, Y);
    expect(gradientOf(product(s, s), [7, 3, 0])).toEqual([8, -8, 0]);
  });

  it('of an input is one by itself', () => {
    expect(gradientOf(Y, [1, 2, 3])).toEqual([0, 1, 0]);
  });

  it('of a plain number is nothing', () => {
    expect(gradientOf(constant(4), [1, 2, 3])).toEqual([0, 0, 0]);
  });

  it('is nothing by what does not count, known or not', () => {
    expect(gradientOf(whereKnown(X, Y, quotient(Z, constant(0))), [1, 2, 3])).toEqual([0, 1, 0]);
  });
});
