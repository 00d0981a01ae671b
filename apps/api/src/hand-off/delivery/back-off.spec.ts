import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backOffMs, nextTryAt, retryAfterMs, tryUntil } from './back-off.ts';

const DAY = 86_400_000;

describe('backOffMs', () => {
  it('doubles from 5 s to a day', () => {
    expect([1, 2, 3, 4, 10].map((tries) => backOffMs(tries, 1))).toEqual([5_000, 10_000, 20_000, 40_000, 2_560_000]);
    expect([16, 50, 1e9].map((tries) => backOffMs(tries, 1))).toEqual([DAY, DAY, DAY]);
  });

  it('is anywhere between a second and the most, by chance', () => {
    expect(backOffMs(3, 0.5)).toBe(10_000);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), fc.double({ min: 0, max: 1, noNaN: true }), (tries, chance) => {
        expect(backOffMs(tries, chance)).toBeGreaterThanOrEqual(1_000);
        expect(backOffMs(tries, chance)).toBeLessThanOrEqual(Math.max(1_000, backOffMs(tries, 1)));
      }),
    );
  });
});

describe('retryAfterMs', () => {
  const now = new Date('2026-01-01T12:00:00.000Z');
  it.each<[string | null, number]>([
    ['120', 120_000],
    [' 7 ', 7_000],
    // The date form of RFC 9110, 5.6.7.
    ['Thu, 01 Jan 2026 12:00:30 GMT', 30_000],
    ['Thu, 01 Jan 2026 11:00:00 GMT', 0],
    ['99999999999', DAY],
    ['soon', 0],
    ['-5', 0],
    ['', 0],
    [null, 0],
  ])('%s', (header, expected) => expect(retryAfterMs(header, now)).toBe(expected));
});

describe('nextTryAt', () => {
  const until = tryUntil(new Date('2026-01-01T12:00:00.000Z'));

  it('waits, but not past the end of the day, where a last try falls', () => {
    expect(until).toBe('2026-01-02T12:00:00.000Z');
    expect(nextTryAt(new Date('2026-01-01T12:00:00.000Z'), until, 5_000)).toBe('2026-01-01T12:00:05.000Z');
    expect(nextTryAt(new Date('2026-01-02T11:59:59.999Z'), until, 5_000)).toBe(until);
    expect(nextTryAt(new Date(until), until, 5_000)).toBeNull();
  });
});
