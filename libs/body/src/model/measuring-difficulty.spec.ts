import { expect, it } from 'vitest';
import { MEASURING_DIFFICULTY } from './measuring-difficulty.ts';

it('runs from what is easy alone to what needs a second person', () => {
  const difficulties = Object.values(MEASURING_DIFFICULTY);
  expect(difficulties).toEqual([...difficulties].sort());
});
