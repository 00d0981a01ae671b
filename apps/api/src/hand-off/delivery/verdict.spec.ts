import { expect, it } from 'vitest';
import { verdictOf } from './verdict.ts';

it.each([
  [200, 'arrived'],
  [204, 'arrived'],
  [299, 'arrived'],
  [301, 'try-again'],
  [307, 'try-again'],
  [400, 'try-again'],
  [404, 'try-again'],
  [410, 'gone'],
  [429, 'slow-down'],
  [500, 'try-again'],
  [502, 'slow-down'],
  [503, 'try-again'],
  [504, 'slow-down'],
])('%i: %s (Standard Webhooks 1.0.0)', (status, verdict) => {
  expect(verdictOf({ status, retryAfter: null, answer: '' })).toBe(verdict);
});

it('no answer is tried again', () => expect(verdictOf({ failure: 'timed-out' })).toBe('try-again'));
