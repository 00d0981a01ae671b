import { afterEach, expect, it, vi } from 'vitest';
import { continueIdsAfter, newId } from './new-id.ts';

const V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

afterEach(() => void vi.useRealTimers());

it('are UUIDs v7 that sort in the order they were made, also where the clock is set back', () => {
  vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2030, 0, 1, 12) });
  const ids = Array.from({ length: 1000 }, newId);
  vi.setSystemTime(Date.UTC(2030, 0, 1, 11));
  ids.push(...Array.from({ length: 1000 }, newId));
  expect(ids.every((id) => V7.test(id))).toBe(true);
  expect([...ids].sort()).toEqual(ids);
  expect(new Set(ids).size).toBe(2000);
});

it('go on after one that a process before made with its clock ahead', () => {
  const hour = Date.now() + 3_600_000;
  const before = `${hour
    .toString(16)
    .padStart(12, '0')
    .replace(/^(.{8})/, '$1-')}-7fff-bfff-ffffffffffff`;
  continueIdsAfter(before);
  expect(newId() > before).toBe(true);
});

it('do not follow one that is no time at all', () => {
  continueIdsAfter('ffffffff-ffff-7fff-bfff-ffffffffffff');
  continueIdsAfter('not an id');
  expect(newId() < 'f').toBe(true);
});
