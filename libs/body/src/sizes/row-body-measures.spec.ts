import { describe, expect, it } from 'vitest';
import { napeToCuffFits } from '../child/nape-to-cuff.ts';
import { rowBodyMeasures } from './row-body-measures.ts';
import { publishedSizes, sizeRow, sizeTable } from './size-tables.ts';

describe('rowBodyMeasures', () => {
  it('gives the midpoints of a row, as read in a table', () => {
    const measures = rowBodyMeasures(sizeRow(sizeTable('craft-yarn-council-woman'), 'M'));
    expect(measures).toHaveLength(9);
    expect(measures.find(({ name }) => name === 'across-back')).toEqual({
      name: 'across-back',
      value: 400.05, // 15¾ in
      how: 'table',
      from: { code: 'size-row', params: { row: 'Craft Yarn Council, woman M', mark: 'from memory' } },
    });
  });

  it('leaves out a nape to cuff too long for its own arm, which only size 2 has', () => {
    const flagged = publishedSizes()
      .flatMap(({ rows }) => rows)
      .filter((row) => !napeToCuffFits(row));
    expect(flagged.map(({ label }) => label)).toEqual(['Craft Yarn Council, child 2']);
    expect(rowBodyMeasures(flagged[0]!).map(({ name }) => name)).not.toContain('nape-to-cuff');
  });
});
