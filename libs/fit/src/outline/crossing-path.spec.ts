import { describe, expect, it } from 'vitest';
import { crossesItself } from './crossing-path.ts';

describe('a path', () => {
  it('of steps upward does not cross itself', () => {
    expect(
      crossesItself([
        [0, 0],
        [2, 0],
        [2, 3],
        [1, 3],
        [1, 5],
      ]),
    ).toBe(false);
  });

  it('that runs over an earlier side crosses itself', () => {
    expect(
      crossesItself([
        [0, 0],
        [4, 0],
        [4, 2],
        [2, 2],
        [2, -1],
      ]),
    ).toBe(true);
  });

  it('that comes back to touch a side counts as crossing', () => {
    expect(
      crossesItself([
        [0, 0],
        [4, 0],
        [4, 2],
        [2, 2],
        [2, 0],
      ]),
    ).toBe(true);
  });
});
