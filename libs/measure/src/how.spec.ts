import { expect, it } from 'vitest';
import { HOWS, isMeasured } from './how.ts';

it('a tape was laid by whoever was trained or at home, not for a guess or a table', () => {
  expect(HOWS.filter(isMeasured)).toEqual(['trained', 'home']);
  expect(HOWS.map(isMeasured)).toEqual([true, true, false, false]);
});
