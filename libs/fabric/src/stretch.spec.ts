import { expect, it } from 'vitest';
import { usableAcross, usableOf } from './stretch.ts';

it('uses half of what was measured', () => {
  expect(usableOf(0.6)).toBe(0.3);
  expect(usableAcross('crochet', { across: 0.4, along: 0.1 })).toBe(0.2);
});

it('takes the cautious end of what is usual where nothing was measured', () => {
  expect(usableAcross('knit', null)).toBe(0.1);
  expect(usableAcross('crochet', null)).toBe(0.04);
});
