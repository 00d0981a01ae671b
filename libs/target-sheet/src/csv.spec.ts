import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardiganSheet, pulloverSheet, sampleSheets } from '../../../tests/target-sheet/samples/index.ts';
import { csvLine, toCsv } from './csv.ts';
import { inUnit } from './in-unit.ts';

type Row = Record<string, string>;
const rowsOf = (csv: string): Row[] => parse(csv, { columns: true, record_delimiter: '\r\n' });

describe('a sheet as CSV', () => {
  it('has one row a dimension, in the order of the sheet', () => {
    for (const sheet of sampleSheets) {
      const expected = [
        ...sheet.assembled.map(({ name }) => ['assembled', name]),
        ...sheet.pieces.flatMap(({ piece, dimensions }) => dimensions.map(({ name }) => [piece, name])),
      ];
      expect(rowsOf(toCsv(sheet)).map((row) => [row['piece'], row['name']])).toEqual(expected);
    }
  });

  it('starts as spreadsheets and planners expect', () => {
    const [header, first] = toCsv(inUnit(pulloverSheet, 'cm')).split('\r\n');
    expect(header).toBe('piece,name,axis,value,unit,low,high,as made');
    expect(first).toBe('assembled,chest-width,,51.35,cm,50.7,52.6,');
  });

  it('gives the numbers of the sheet, and nothing where there is no advice', () => {
    const sheet = inUnit(cardiganSheet, 'in');
    const dimensions = [...sheet.assembled, ...sheet.pieces.flatMap((piece) => piece.dimensions)];
    rowsOf(toCsv(sheet)).forEach((row, index) => {
      const dimension = dimensions[index];
      expect(row['unit']).toBe('in');
      if (dimension?.value === null)
        expect([row['value'], row['low'], row['high'], row['as made']]).toEqual(['', '', '', '']);
      else expect(Number(row['value'])).toBeCloseTo(dimension?.value ?? NaN, 6);
    });
  });

  it('writes any cell so that it is read back, formulas as text', () => {
    const cell = fc.oneof(
      fc.string(),
      fc.constantFrom('=1+1', '+1', '-1', '@x', '\ttab', 'a,b', 'say "x"', 'two\r\nlines'),
    );
    fc.assert(
      fc.property(fc.array(cell, { minLength: 2, maxLength: 5 }), (cells) => {
        const [read = []] = parse(csvLine(cells), { record_delimiter: '\r\n' }) as string[][];
        read.forEach((text, index) => {
          expect(text).not.toMatch(/^[=+\-@\t\r\n]/);
          expect([cells[index], `'${cells[index]}`]).toContain(text);
        });
        expect(read).toHaveLength(cells.length);
      }),
    );
  });

  it('keeps negative numbers numbers', () => {
    expect(csvLine(['x', -2.5, 1e-9, null])).toBe('x,-2.5,0,\r\n');
  });
});
