import { describe, expect, it } from 'vitest';
import { atLeast, atMost } from './limits.ts';

describe('limits', () => {
  it('keep a number within them', () => {
    expect([atLeast(5, 7), atLeast(9, 7), atMost(5, 7), atMost(9, 7)]).toEqual([7, 9, 5, 7]);
  });

  it('that are not known keep nothing; a number that is not known stays so', () => {
    expect([atLeast(5, NaN), atMost(5, NaN)]).toEqual([5, 5]);
    expect([atLeast(NaN, 7), atMost(NaN, 7)]).toEqual([NaN, NaN]);
  });
});
