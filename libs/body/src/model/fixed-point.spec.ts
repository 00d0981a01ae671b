import { describe, expect, it } from 'vitest';
import { fixedPoint } from './fixed-point.ts';

function search(start: number, next: (b: number) => number) {
  const at: number[] = [];
  const found = fixedPoint(start, (b) => {
    at.push(b);
    return { b: next(b), at: b };
  });
  return { at, found };
}

describe('the fixed point', () => {
  it('of a line is found by one secant, also where repetition would swing ever wider', () => {
    for (const slope of [0.5, -0.5, -3]) {
      const { found } = search(0, (b) => slope * b + 0.1 * (1 - slope));
      expect(found.b).toBeCloseTo(0.1, 9);
    }
  });

  it('is there at once where the start is it', () => {
    expect(search(0.2, () => 0.2).at).toEqual([0.2]);
  });

  it('takes four evaluations at most, and hands out the last one', () => {
    const { at, found } = search(0, (b) => Math.cos(3 * b));
    expect(at).toHaveLength(4);
    expect(found.at).toBe(at[3]);
  });

  it('is sought among bodies of 9 to 125 kg/m² alone', () => {
    expect(search(0, () => 100).found.b).toBeCloseTo(Math.log(125 / 25), 12);
    expect(search(0, () => -100).found.b).toBeCloseTo(Math.log(9 / 25), 12);
  });

  it('is the evaluation itself where a secant would be level', () => {
    expect(search(0, (b) => b + 0.25).found.b).toBe(1);
  });
});
