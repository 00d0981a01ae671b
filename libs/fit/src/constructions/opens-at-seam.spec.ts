import { expect, it } from 'vitest';
import { opensAtSeam } from './opens-at-seam.ts';

it('finds a seam beside every neck but that of a raglan vest', () => {
  expect(opensAtSeam({ silhouette: 'vest', construction: 'raglan' })).toBe(false);
  expect(opensAtSeam({ silhouette: 'vest', construction: 'set-in' })).toBe(true);
  expect(opensAtSeam({ silhouette: 'pullover', construction: 'raglan' })).toBe(true);
});
