import { expect, it } from 'vitest';
import { RepeatFolder } from './repeat-folder.ts';

it('lets one of a kind through in each window, with how many it left out', () => {
  let now = 0;
  const folder = new RepeatFolder(10, () => now);
  expect(folder.admit('a')).toBe(0);
  for (now = 1; now < 10; now++) expect(folder.admit('a')).toBeNull();
  expect(folder.admit('b')).toBe(0);
  now = 10;
  expect(folder.admit('a')).toBe(9);
  expect(folder.admit('a')).toBeNull();
});

it('does not grow without end', () => {
  const folder = new RepeatFolder(1e9, () => 0);
  for (let kind = 0; kind < 5_000; kind++) expect(folder.admit(String(kind))).toBe(0);
});
