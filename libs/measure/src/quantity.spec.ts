import fc, { type Arbitrary } from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  abs,
  atLeast,
  atMost,
  besideLeast,
  bySign,
  constant,
  hypot,
  leg,
  max,
  min,
  minus,
  plus,
  positive,
  product,
  quotient,
  root,
  rootWithin,
  sqrt,
  times,
  unknown,
  whereKnown,
  type Operation,
  type Quantity,
} from './quantity.ts';

const A = unknown();
const B = unknown();
const C = unknown();

function operationOf(of: Quantity): Operation {
  if (of.kind !== 'applied') throw new Error(`A quantity of kind ${of.kind} has no operation.`);
  return of.operation;
}
const valueOf = (of: Quantity, ...x: readonly number[]): number => operationOf(of).value(x);
const partialsOf = (of: Quantity, ...x: readonly number[]): readonly number[] =>
  operationOf(of).partials(x, operationOf(of).value(x));

it('an unknown is an input, each one its own', () => {
  expect(unknown()).toEqual({ kind: 'input' });
  expect(unknown()).not.toBe(A);
});

describe('a sum', () => {
  it('records each quantity with how many times it is taken', () => {
    expect(plus(A, B)).toEqual({
      kind: 'sum',
      terms: [
        { times: 1, of: A },
        { times: 1, of: B },
      ],
      constant: 0,
    });
    expect(minus(A, B, C)).toMatchObject({ terms: [{ times: 1 }, { times: -1 }, { times: -1 }] });
    expect(times(2.5, A)).toMatchObject({ terms: [{ times: 2.5, of: A }] });
  });

  it('of no times takes nothing, so that it is known where the quantity is not', () => {
    expect(times(0, A)).toEqual(constant(0));
  });

  it('of one quantity is another quantity', () => {
    expect(plus(A)).not.toBe(A);
    expect(plus(A)).not.toBe(plus(A));
  });

  it('of nothing is a plain number', () => {
    expect(constant(7)).toEqual({ kind: 'sum', terms: [], constant: 7 });
  });
});

describe('the value of an operation', () => {
  it.each<[string, Quantity, readonly number[], number]>([
    ['a product', product(A, B), [3, -4], -12],
    ['a quotient', quotient(A, B), [3, -4], -0.75],
    ['the smaller', min(A, B), [3, -4], -4],
    ['the larger', max(A, B), [3, -4], 3],
    ['a number above its ceiling', atMost(A, B), [5, 4], 4],
    ['a number below its ceiling', atMost(A, B), [3, 4], 3],
    ['a number above its floor', atLeast(A, B), [5, 4], 5],
    ['a number below its floor', atLeast(A, B), [3, 4], 4],
    ['where another is known', whereKnown(A, B, C), [0, 1, 2], 1],
    ['where another is not known', whereKnown(A, B, C), [NaN, 1, 2], 2],
    ['a share of what is negative', bySign(A, 0.2, 0.35), [-10], -2],
    ['a share of what is positive', bySign(A, 0.2, 0.35), [10], 3.5],
    ['an absolute value', abs(A), [-3], 3],
    ['a positive part of more than nothing', positive(A), [3], 3],
    ['a square root', sqrt(A), [9], 3],
    ['a hypotenuse', hypot(A, B), [3, -4], 5],
    ['a leg', leg(A, B), [5, -4], 3],
    ['what stands beside the least key', besideLeast([A, B], [A, C]), [4, 3, 10, 20], 20],
    ['what stands beside the first of two equal keys', besideLeast([A, B], [A, C]), [3, 3, 10, 20], 10],
    ['what stands beside a key that is not known', besideLeast([A, B], [A, C]), [3, NaN, 10, 20], 20],
    ['what stands beside a first key that is not known', besideLeast([A, B], [A, C]), [NaN, 3, 10, 20], 10],
  ])('of %s', (_, quantity, x, expected) => {
    expect(valueOf(quantity, ...x)).toBeCloseTo(expected, 12);
  });

  it.each<[string, Quantity, readonly number[]]>([
    ['a quotient by nothing', quotient(A, B), [3, 0]],
    ['a square root of less than nothing', sqrt(A), [-1]],
    ['a leg longer than its hypotenuse', leg(A, B), [4, 5]],
    ['a leg of a hypotenuse of less than nothing', leg(A, B), [-5, 4]],
    ['a leg of a hypotenuse of nothing', leg(A, B), [0, 0]],
  ])('is not known of %s', (_, quantity, x) => {
    expect(valueOf(quantity, ...x)).toBeNaN();
  });

  it('of a positive part is a plain zero below zero', () => {
    expect(valueOf(positive(A), -3)).toBe(0);
  });
});

describe('a number that is not known', () => {
  it.each<[string, Quantity]>([
    ['a product', product(A, B)],
    ['a quotient', quotient(A, B)],
    ['the smaller', min(A, B)],
    ['the larger', max(A, B)],
    ['a hypotenuse', hypot(A, B)],
    ['a leg', leg(A, B)],
  ])('makes %s not known, whichever of the two it is', (_, quantity) => {
    expect([valueOf(quantity, NaN, 1), valueOf(quantity, 1, NaN)]).toEqual([NaN, NaN]);
  });

  it('is not known under an operation of its own', () => {
    const all = [abs(A), positive(A), bySign(A, 0, 0), sqrt(A)];
    expect(all.map((each) => valueOf(each, NaN))).toEqual([NaN, NaN, NaN, NaN]);
  });

  it('as a limit limits nothing, and as what is limited stays not known', () => {
    expect([valueOf(atMost(A, B), 3, NaN), valueOf(atLeast(A, B), 3, NaN)]).toEqual([3, 3]);
    expect([valueOf(atMost(A, B), NaN, 3), valueOf(atLeast(A, B), NaN, 3)]).toEqual([NaN, NaN]);
  });
});

/** Numbers on either side of zero, and none nearer to it than 0.5. */
const number = fc
  .tuple(fc.double({ min: 0.5, max: 100, noNaN: true }), fc.boolean())
  .map(([size, negative]) => (negative ? -size : size));
const apart = fc.tuple(number, number).filter(([a, b]) => Math.abs(a - b) > 0.5);
const pair = fc.tuple(number, number);
const single = fc.tuple(number);
const STEP = 1e-5;

/** The partial derivatives by central differences. */
const differencesOf = (of: Quantity, x: readonly number[]): number[] =>
  x.map((_, i) => {
    const moved = (by: number): number => valueOf(of, ...x.map((each, j) => (i === j ? each + by : each)));
    return (moved(STEP) - moved(-STEP)) / (2 * STEP);
  });

describe('the partial derivatives', () => {
  it.each<[string, Quantity, Arbitrary<readonly number[]>]>([
    ['a product', product(A, B), pair],
    ['a quotient', quotient(A, B), pair],
    ['the smaller', min(A, B), apart],
    ['the larger', max(A, B), apart],
    ['a ceiling', atMost(A, B), apart],
    ['a floor', atLeast(A, B), apart],
    ['a choice', whereKnown(A, B, C), fc.tuple(number, number, number)],
    ['two slopes', bySign(A, 0.2, 0.35), single],
    ['an absolute value', abs(A), single],
    ['a positive part', positive(A), single],
    ['a square root', sqrt(A), single.map(([a]) => [Math.abs(a)])],
    ['a hypotenuse', hypot(A, B), pair],
    ['a leg', leg(A, B), pair.map(([a, b]) => [Math.abs(a) + Math.abs(b), b])],
    ['the value beside the least', besideLeast([A, B], [A, C]), fc.tuple(apart, pair).map(([k, v]) => [...k, ...v])],
  ])('of %s are what central differences approach', (_, quantity, place) => {
    fc.assert(
      fc.property(place, (x) => {
        const expected = differencesOf(quantity, x);
        expect(partialsOf(quantity, ...x)).toHaveLength(x.length);
        partialsOf(quantity, ...x).forEach((partial, i) =>
          expect(Math.abs(partial - expected[i]!)).toBeLessThan(1e-6 * Math.max(1, Math.abs(partial))),
        );
      }),
    );
  });

  it('of a limit are those of what it is held at', () => {
    expect([partialsOf(atMost(A, B), 3, 2), partialsOf(atLeast(A, B), 2, 3)]).toEqual([
      [0, 1],
      [0, 1],
    ]);
    expect([partialsOf(min(A, B), 3, 2), partialsOf(max(A, B), 2, 3)]).toEqual([
      [0, 1],
      [0, 1],
    ]);
  });

  it('of a choice whose first is not known are the third’s', () => {
    expect(partialsOf(whereKnown(A, B, C), NaN, 1, 2)).toEqual([0, 0, 1]);
  });
});

describe('at a kink', () => {
  it.each<[string, Quantity]>([
    ['the smaller', min(A, B)],
    ['the larger', max(A, B)],
    ['a ceiling', atMost(A, B)],
    ['a floor', atLeast(A, B)],
  ])('%s of two equal numbers moves with the first', (_, quantity) => {
    expect(partialsOf(quantity, 3, 3)).toEqual([1, 0]);
  });

  it('zero belongs to what is not negative', () => {
    expect([partialsOf(bySign(A, 0.2, 0.35), 0), partialsOf(abs(A), 0), partialsOf(positive(A), 0)]).toEqual([
      [0.35],
      [1],
      [1],
    ]);
  });

  it('a root of nothing does not move', () => {
    expect(partialsOf(sqrt(A), 0)).toEqual([0]);
    expect(partialsOf(hypot(A, B), 0, 0)).toEqual([0, 0]);
    expect(partialsOf(leg(A, B), 5, 5).map(Math.abs)).toEqual([0, 0]);
  });

  it('of two equal keys the first one’s value moves', () => {
    expect(partialsOf(besideLeast([A, B], [A, C]), 3, 3, 10, 20)).toEqual([0, 0, 1, 0]);
  });
});

describe('a root', () => {
  it('records its residual over an unknown of its own, its ends, and what it does beyond them', () => {
    const free = root(1, 9, (x) => minus(x, A));
    const kept = rootWithin(1, 9, (x) => minus(x, A));
    expect([free, kept]).toMatchObject([
      { kind: 'root', lower: 1, upper: 9, clamped: false },
      { kind: 'root', lower: 1, upper: 9, clamped: true },
    ]);
    if (free.kind !== 'root' || kept.kind !== 'root') throw new Error('A root is of another kind.');
    expect(free.residual).toMatchObject({
      terms: [
        { times: 1, of: free.unknown },
        { times: -1, of: A },
      ],
    });
    expect(free.unknown).not.toBe(kept.unknown);
  });
});
