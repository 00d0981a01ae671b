import { expect, it } from 'vitest';
import { polygonArea } from './polygon-area.ts';

it('is a triangle’s half base times height, counter-clockwise', () => {
  const triangle = [
    [1, 1],
    [5, 1],
    [2, 4],
  ] as const;
  expect(polygonArea(triangle)).toBe(6);
  expect(polygonArea([...triangle].reverse())).toBe(-6);
});
