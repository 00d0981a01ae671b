import { describe, expect, it } from 'vitest';
import { nearestRow } from './nearest-row.ts';
import type { SizeRow } from './published-sizes.ts';

const row = (size: string, low: number, high = low): SizeRow => ({
  table: 'any',
  size,
  label: size,
  ageYears: null,
  published: {},
  mm: { 'chest-girth': { low, mid: (low + high) / 2, high } },
});
const without: SizeRow = { ...row('without', 0), mm: {} };
const rows = [row('S', 800, 820), without, row('M', 840, 860), row('L', 900, 920)];
const find = (value: number, reading?: number) => {
  const found = nearestRow(rows, ({ mm }) => mm['chest-girth'], value, ...(reading === undefined ? [] : [reading]));
  return [found.row?.size ?? null, found.lies, found.neighbours.map(({ size }) => size).join()];
};

describe('the row nearest to a value', () => {
  it.each([
    [800, 'S', 'in', 'S'],
    [820, 'S', 'in', 'S'],
    [810, 'S', 'in', 'S'],
    [821, 'S', 'between', 'S,M'],
    [829.9, 'S', 'between', 'S,M'],
    [830, 'M', 'between', 'S,M'], // equally near to both: the larger
    [839, 'M', 'between', 'S,M'],
    [879, 'M', 'between', 'M,L'],
    [881, 'L', 'between', 'M,L'],
    [795, 'S', 'below', 'S'],
    [790, 'S', 'below', 'S'], // half of the gap to the next size
    [789, null, 'below', 'S'],
    [925, 'L', 'above', 'L'],
    [940, 'L', 'above', 'L'],
    [941, null, 'above', 'L'],
  ])('%d: %s, %s, beside %s', (value, size, lies, neighbours) => {
    expect(find(value)).toEqual([size, lies, neighbours]);
  });

  it('is that of a range within a reading of the value', () => {
    expect(find(822.5, 2.5)).toEqual(['S', 'in', 'S']);
    expect(find(797.5, 2.5)).toEqual(['S', 'in', 'S']);
    expect(find(822.6, 2.5)).toEqual(['S', 'between', 'S,M']);
    expect(find(820 + 1e-7)).toEqual(['S', 'in', 'S']);
  });

  it('of a table of one size is that size alone', () => {
    const only = (value: number) => nearestRow([row('M', 840, 860)], ({ mm }) => mm['chest-girth'], value).row?.size;
    expect([only(839), only(840), only(860), only(861)]).toEqual([undefined, 'M', 'M', undefined]);
  });

  it('of no rows is none', () => {
    expect(nearestRow([without], ({ mm }) => mm['chest-girth'], 800)).toEqual({
      row: null,
      lies: 'above',
      neighbours: [],
    });
  });
});
