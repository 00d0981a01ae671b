/**
 * EN 13402-3, Size designation of clothes: class centres and letters, from memory. Which end of a class is included is not
 * verified, so no value on a shared end is asked for.
 */
import { describe, expect, it } from 'vitest';
import { sizeTable, type PublishedSizes } from '#body';

function sizesHolding(table: PublishedSizes, cm: number): string[] {
  return table.rows
    .filter(({ published }) => {
      const { low, high } = Object.values(published)[0]!;
      return low < cm && cm < high;
    })
    .map(({ size }) => size);
}

describe('EN 13402-3', () => {
  it('bust 96 lies in the class 94 to 98, letter M', () => {
    expect(sizesHolding(sizeTable('en-13402-3-women-bust'), 96)).toEqual(['96']);
    const row = sizeTable('en-13402-3-women-bust').rows.find(({ size }) => size === '96')!;
    expect(row.published['chest-girth']).toEqual({ low: 94, mid: 96, high: 98 });
    expect(sizesHolding(sizeTable('en-13402-3-women-letters'), 96)).toEqual(['M']);
  });

  it.each([
    ['en-13402-3-women-bust', 'en-13402-3-women-letters'],
    ['en-13402-3-men-chest', 'en-13402-3-men-letters'],
  ])('every centre of %s up to the largest letter lies in exactly one letter', (classes, letters) => {
    const largest = sizeTable(letters).rows.at(-1)!.published['chest-girth']!.high;
    for (const { published } of sizeTable(classes).rows) {
      const centre = published['chest-girth']!.mid;
      if (centre < largest) expect(sizesHolding(sizeTable(letters), centre), String(centre)).toHaveLength(1);
    }
  });

  it.each(['en-13402-3-women-bust', 'en-13402-3-women-hip', 'en-13402-3-men-chest'])('%s has no gap', (id) => {
    const ranges = sizeTable(id).rows.map(({ published }) => Object.values(published)[0]!);
    ranges.slice(1).forEach(({ low }, index) => expect(low).toBe(ranges[index]!.high));
  });
});
