import fc from 'fast-check';
import { expect, it } from 'vitest';
import { spread } from './spread.ts';

it('spreads shaping over even rows where there are enough, else over any', () => {
  expect(spread(3, 18)).toEqual([{ rows: 6, times: 3 }]);
  expect(spread(2, 3)).toEqual([
    { rows: 1, times: 1 },
    { rows: 2, times: 1 },
  ]);
  expect(spread(0, 10)).toEqual([]);
  expect(spread(5, 4)).toBeNull();
});

it('takes every time, no more rows than there are, and leaves less than one longer interval', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 400 }), (times, rows) => {
      const intervals = spread(times, rows);
      if (intervals === null) {
        expect(times).toBeGreaterThan(rows);
        return;
      }
      const all = intervals.flatMap((each) => Array<number>(each.times).fill(each.rows));
      const taken = all.reduce((sum, each) => sum + each, 0);
      expect(all).toHaveLength(times);
      expect(taken).toBeLessThanOrEqual(rows);
      expect(rows - taken).toBeLessThanOrEqual(1);
      expect(Math.max(...all) - Math.min(...all)).toBeLessThanOrEqual(2);
    }),
  );
});
