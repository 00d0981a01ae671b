import { describe, expect, it } from 'vitest';
import type { PostResult } from './post.ts';
import { transitionAfter } from './transition.ts';

const now = new Date('2026-01-01T12:00:00.000Z');
const tryUntil = '2026-01-02T12:00:00.000Z';
const answer = (status: number, retryAfter: string | null = null): PostResult => ({ status, retryAfter, answer: '' });
const first = (result: PostResult) => transitionAfter({ tries: 1, tryUntil }, result, now, 1);

describe('transitionAfter', () => {
  it('is done when it has arrived', () => {
    expect(first(answer(204))).toEqual({
      state: 'arrived',
      nextTryAt: null,
      plannerRestsUntil: null,
      plannerStops: false,
    });
  });

  it('tries again after the back-off: 5 s at most after the first, 10 s after the second', () => {
    for (const result of [answer(500), answer(302), answer(404), { failure: 'timed-out' } as const]) {
      expect(first(result)).toMatchObject({
        state: 'waiting',
        nextTryAt: '2026-01-01T12:00:05.000Z',
        plannerRestsUntil: null,
      });
    }
    expect(transitionAfter({ tries: 2, tryUntil }, answer(500), now, 1).nextTryAt).toBe('2026-01-01T12:00:10.000Z');
  });

  it('waits as long as the planner asks', () => {
    expect(first(answer(503, '3600'))).toMatchObject({
      nextTryAt: '2026-01-01T13:00:00.000Z',
      plannerRestsUntil: null,
    });
  });

  it.each([429, 502, 504])('sends the planner nothing meanwhile after %i', (status) => {
    expect(first(answer(status, '60'))).toMatchObject({
      nextTryAt: '2026-01-01T12:01:00.000Z',
      plannerRestsUntil: '2026-01-01T12:01:00.000Z',
    });
    expect(first(answer(status)).plannerRestsUntil).toBe('2026-01-01T12:00:05.000Z');
  });

  it('stops the planner that is gone, and gives the hand-off up', () => {
    expect(first(answer(410))).toMatchObject({ state: 'dead', nextTryAt: null, plannerStops: true });
  });

  it('gives up when the day is over, with a last try at its end', () => {
    const late = new Date('2026-01-02T11:59:59.000Z');
    expect(transitionAfter({ tries: 15, tryUntil }, answer(500), late, 1)).toMatchObject({
      state: 'waiting',
      nextTryAt: tryUntil,
    });
    expect(transitionAfter({ tries: 16, tryUntil }, answer(500), new Date(tryUntil), 1)).toMatchObject({
      state: 'dead',
      nextTryAt: null,
    });
  });
});
