import { describe, expect, it } from 'vitest';
import { DomainError, LENGTH_UNITS, MM_PER_UNIT } from '#measure';
import { BODY_DIMENSIONS } from '../body-dimension.ts';
import { FIGURES } from '../body.ts';
import { publishedSizes, rowSource, sizeRow, sizeTable } from './size-tables.ts';

const MARKS = ['read in a published page', 'from memory, partly confirmed', 'from memory', 'derived'];

describe('the published tables', () => {
  it('have ids of their own, known words, and a mark on every line', () => {
    const ids = publishedSizes().map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const table of publishedSizes()) {
      expect(FIGURES).toContain(table.figure);
      expect(LENGTH_UNITS).toContain(table.unit);
      expect(new Set(table.rows.map(({ size }) => size)).size).toBe(table.rows.length);
      for (const { name, mark } of table.measures) {
        expect(BODY_DIMENSIONS).toContain(name);
        expect(MARKS).toContain(mark);
      }
    }
  });

  it('hold every cell as published and in millimetres, low ≤ mid ≤ high', () => {
    for (const table of publishedSizes()) {
      for (const row of table.rows) {
        expect(Object.keys(row.published).sort()).toEqual(table.measures.map(({ name }) => name).sort());
        for (const { name } of table.measures) {
          const { low, mid, high } = row.published[name]!;
          expect(low).toBeGreaterThan(0);
          expect(low).toBeLessThanOrEqual(mid);
          expect(mid).toBeLessThanOrEqual(high);
          for (const end of ['low', 'mid', 'high'] as const) {
            const mm = row.mm[name]![end];
            expect(mm).toBeCloseTo(row.published[name]![end] * MM_PER_UNIT[table.unit], 9);
            // Nothing of binary fractions is left: 838.2, not 838.1999999999999.
            expect(mm).toBe(Number(mm.toFixed(3)));
          }
        }
      }
    }
  });

  it('grow from size to size in the measure they are read by', () => {
    for (const table of publishedSizes()) {
      const by = table.measures[0]!.name;
      const mids = table.rows.map((row) => row.mm[by]!.mid);
      expect([...mids].sort((a, b) => a - b)).toEqual(mids);
    }
  });

  it('read as printed', () => {
    const medium = sizeRow(sizeTable('craft-yarn-council-woman'), 'M');
    expect(medium.published['nape-to-cuff']).toEqual({ low: 29, mid: 29.25, high: 29.5 });
    expect(medium.published['back-waist-length']).toEqual({ low: 17.25, mid: 17.25, high: 17.25 });
    expect(medium.mm['chest-girth']!.mid).toBeCloseTo(939.8, 9); // 37 in
    const man = sizeRow(sizeTable('craft-yarn-council-man'), 'M');
    expect(man.published['back-waist-length']).toBeUndefined(); // its length row runs to the hip
    expect(man.published['back-hip-length']).toEqual({ low: 26.5, mid: 26.625, high: 26.75 });
    expect(sizeRow(sizeTable('craft-yarn-council-baby'), '12 months').ageYears).toBe(1);
  });

  it('say where a value is from', () => {
    const six = sizeRow(sizeTable('craft-yarn-council-child'), '6');
    expect(rowSource(six, 'chest-girth')).toEqual({
      code: 'size-row',
      params: { row: 'Craft Yarn Council, child 6', mark: 'from memory' },
    });
    expect(rowSource(six, 'upper-arm-girth').params).toMatchObject({ mark: 'read in a published page' });
  });

  it('name what there is when asked for what there is not', () => {
    expect(() => sizeTable('none')).toThrow(DomainError);
    const listing = (...known: string[]) =>
      expect.objectContaining({ params: expect.objectContaining({ known: expect.arrayContaining(known) }) });
    expect(() => sizeTable('none')).toThrow(listing('craft-yarn-council-woman'));
    expect(() => sizeRow(sizeTable('craft-yarn-council-man'), '3X')).toThrow(listing('S', 'M', 'L', 'XL', 'XXL'));
  });
});
