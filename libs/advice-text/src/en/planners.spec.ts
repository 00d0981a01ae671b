import { expect, it } from 'vitest';
import { text } from '../text.ts';

const READER = { tape: 'cm' } as const;

it('says why a name is missing in a sheet, and what is left out or rounded too far', () => {
  const params = { name: 'sleeve/cap-height', silhouette: 'pullover', construction: 'drop-shoulder' };
  const reason = { code: 'not-in-sheet', params } as const;
  const missing = 'This sheet (pullover, drop-shoulder) has no sleeve/cap-height.';
  expect(text('missing', reason, READER)).toBe(missing);
  expect(text('plannerWarning', { code: 'left-out', params: { reason } }, READER)).toBe(`Left out. ${missing}`);
  expect(text('plannerWarning', { code: 'rounded-outside-limits', params: { step: 5, unit: 'mm' } }, READER)).toBe(
    'No multiple of 5 mm lies within how far it may be rounded.',
  );
});
