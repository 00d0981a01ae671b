import { expect, it } from 'vitest';
import { HOWS, howText } from './how.ts';

it('has words of its own for every way of measuring', () => {
  expect(new Set(HOWS.map(howText)).size).toBe(HOWS.length);
  expect(howText('home')).toBe('measured at home');
});
