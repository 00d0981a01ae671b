import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate } from './propagate.ts';
import {
  add,
  divide,
  exactly,
  input,
  multiply,
  scale,
  squareRoot,
  standardUncertainty as u,
  subtract,
  type Uncertain,
} from './uncertain.ts';

const chest = input('chest', 940, 15);
const thickness = input('thickness', 6, 0.3);

describe('uncertain values', () => {
  it('gives no doubt to x − x and to x / x', () => {
    expect(subtract(chest, chest)).toMatchObject({ value: 0 });
    expect(u(subtract(chest, chest))).toBe(0);
    expect(divide(chest, chest).value).toBe(1);
    expect(u(divide(chest, chest))).toBeCloseTo(0, 15);
  });

  it('doubles the doubt of x + x, as 2x does', () => {
    expect(u(add(chest, chest))).toBe(30);
    expect(u(scale(chest, 2))).toBe(30);
  });

  it('counts a thickness once that comes in by two ways: W = (chest + 75)/2 + 2(t − t₀), panel = W − (2 − π/2)t', () => {
    const width = add(scale(add(chest, exactly(75)), 0.5), scale(subtract(thickness, exactly(3)), 2));
    const panel = subtract(width, scale(thickness, 2 - Math.PI / 2));
    expect(width.value).toBeCloseTo(513.5, 9);
    /** √(7.5² + (2 × 0.3)²) and √(7.5² + (π/2 × 0.3)²). */
    expect(u(width)).toBeCloseTo(7.52396, 4);
    expect(u(panel)).toBeCloseTo(7.51479, 4);
  });

  it('takes the correlation of two inputs, in either order of their names', () => {
    const sum = add(input('a', 1, 3), input('b', 1, 4));
    expect(u(sum)).toBe(5);
    expect(u(sum, [{ between: ['a', 'b'], r: 1 }])).toBe(7);
    expect(u(sum, [{ between: ['b', 'a'], r: -1 }])).toBe(1);
  });

  it('carries products, quotients and roots by their slopes', () => {
    const a = input('a', 8, 0.4);
    const b = input('b', 2, 0.1);
    expect(multiply(a, b).value).toBe(16);
    expect(u(multiply(a, b))).toBeCloseTo(propagate([2, 8], [0.4, 0.1]), 12);
    expect(u(divide(a, b))).toBeCloseTo(propagate([1 / 2, -8 / 4], [0.4, 0.1]), 12);
    expect(u(squareRoot(multiply(a, b)))).toBeCloseTo(propagate([2 / 8, 8 / 8], [0.4, 0.1]), 12);
  });

  it('has the slopes that differences show', () => {
    const of = (x: Uncertain, y: Uncertain) =>
      divide(squareRoot(add(multiply(x, x), scale(y, 3))), subtract(x, scale(y, 0.1)));
    const positive = fc.double({ min: 1, max: 50, noNaN: true });
    fc.assert(
      fc.property(positive, fc.double({ min: 0.1, max: 5, noNaN: true }), (x, y) => {
        const at = (dx: number, dy: number) => of(exactly(x + dx), exactly(y + dy)).value;
        const h = 1e-5;
        const { components } = of(input('x', x, 1), input('y', y, 1));
        expect(components.get('x')).toBeCloseTo((at(h, 0) - at(-h, 0)) / (2 * h), 6);
        expect(components.get('y')).toBeCloseTo((at(0, h) - at(0, -h)) / (2 * h), 6);
      }),
    );
  });

  it('takes any name, and changes none of its inputs', () => {
    const odd = input('__proto__', 1, 2);
    expect(u(add(odd, input('constructor', 1, 0)))).toBe(2);
    expect(odd.components.size).toBe(1);
  });

  it('takes half a correlation as half: 3² + 4² + 2·½·3·4 = 37', () => {
    const sum = add(input('a', 1, 3), input('b', 1, 4));
    expect(u(sum, [{ between: ['a', 'b'], r: 0.5 }])).toBeCloseTo(Math.sqrt(37), 12);
    expect(u(input('a', 1, 0))).toBe(0);
  });

  it('says what it refuses', () => {
    expect(() => input('a', 1, -1)).toThrow(expect.objectContaining({ params: { name: 'a', u: -1 } }));
    expect(() => input('a', 1, NaN)).toThrow(expect.objectContaining({ code: 'uncertainty-invalid' }));
    expect(() => squareRoot(exactly(-4))).toThrow(expect.objectContaining({ params: { value: -4 } }));
  });

  it('refuses what has no meaning', () => {
    expect(() => input('a', 1, -1)).toThrow(expect.objectContaining({ code: 'uncertainty-invalid' }));
    expect(() => divide(chest, exactly(0))).toThrow(expect.objectContaining({ code: 'division-by-zero' }));
    expect(() => squareRoot(exactly(0))).toThrow(expect.objectContaining({ code: 'root-not-differentiable' }));
  });
});
