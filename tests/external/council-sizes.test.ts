/**
 * Craft Yarn Council, Standards & Guidelines for Crochet and Knitting: women's sizes XS to 5X. Values from memory,
 * the bust partly confirmed by a published page.
 */
import { describe, expect, it } from 'vitest';
import { rowBodyMeasures, rowForChest, sizeTable } from '#body';

describe('the Council’s women’s sizes', () => {
  const { rows } = sizeTable('craft-yarn-council-woman');

  it('are nine, XS to 5X', () => {
    expect(rows.map(({ size }) => size)).toEqual(['XS', 'S', 'M', 'L', '1X', '2X', '3X', '4X', '5X']);
  });

  it.each(rows.map((row) => [row.size, row] as const))('%s: armhole depth is 6.25 + (bust − 29)/8 in', (_, row) => {
    const bust = row.published['chest-girth']!.mid;
    expect(row.published['scye-depth']!.mid).toBeCloseTo(6.25 + (bust - 29) / 8, 12);
  });

  it.each(rows.map((row) => [row.size, row] as const))('%s: is found again by its bust', (_, row) => {
    const bust = rowBodyMeasures(row).find(({ name }) => name === 'chest-girth')!.value;
    expect(rowForChest('woman', bust).row).toBe(row);
  });
});
