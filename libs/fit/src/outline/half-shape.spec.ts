import { describe, expect, it } from 'vitest';
import { makesHalf } from './half-shape.ts';
import type { Path } from '../model/path.ts';

/** From the hem's corner up to the underarm, in, up, and to the middle at 100. */
const HALF: Path = [
  [300, 0],
  [310, 400],
  [280, 400],
  [280, 600],
  [180, 600],
  [100, 550],
];

describe('the right half of a shape', () => {
  it('keeps to the right of the middle and does not cross itself', () => {
    expect(makesHalf(HALF, 100)).toBe(true);
  });

  it('may touch the middle, and overstep it by what rounding leaves', () => {
    expect(makesHalf([...HALF, [100 - 1e-10, 540]], 100)).toBe(true);
  });

  it('does not go left of the middle', () => {
    expect(makesHalf([...HALF, [99, 540]], 100)).toBe(false);
  });

  it('does not run over its own side', () => {
    expect(makesHalf([...HALF.slice(0, 4), [320, 300], [100, 550]], 100)).toBe(false);
  });

  it('may have a point twice in a row', () => {
    expect(
      makesHalf(
        HALF.flatMap((point) => [point, point]),
        100,
      ),
    ).toBe(true);
  });
});
