import { describe, expect, it } from 'vitest';
import { neckPath } from './neck-path.ts';
import { lengthOf } from '../model/path.ts';

const NECK = { half: 90, top: 600, depth: 60 };

describe('a neck', () => {
  it('of a V goes straight from its high point to its lowest', () => {
    expect(neckPath(250, NECK, true)).toEqual([
      [340, 600],
      [250, 540],
    ]);
  });

  it('that is round goes down a quarter of an ellipse, from the high point to the middle', () => {
    const path = neckPath(250, NECK, false);
    expect(path[0]).toEqual([340, 600]);
    expect(path.at(-1)).toEqual([expect.closeTo(250, 9), 540]);
    for (const [x, y] of path) expect(((x - 250) / 90) ** 2 + ((600 - y) / 60) ** 2).toBeCloseTo(1, 9);
    for (let i = 1; i < path.length; i++) {
      expect(path[i]![0]).toBeLessThan(path[i - 1]![0]);
      expect(path[i]![1]).toBeLessThan(path[i - 1]![1]);
    }
  });

  /** The quarter of a circle of 90 is 45π = 141.37 long; twelve chords of it 24·90·sin(π/48). */
  it('is as long as its chords', () => {
    expect(lengthOf(neckPath(0, { half: 90, top: 0, depth: 90 }, false))).toBeCloseTo(
      24 * 90 * Math.sin(Math.PI / 48),
      9,
    );
  });

  it('of no depth is level', () => {
    for (const [, y] of neckPath(0, { half: 90, top: 600, depth: 0 }, false)) expect(y).toBe(600);
  });
});
