import { expect, it } from 'vitest';
import { readPrintedTable } from './read-printed-table.ts';

const printed = {
  id: 'any',
  label: 'Any table',
  title: 'A table',
  publisher: 'Nobody',
  figure: 'child',
  unit: '[in_i]',
  sizes: ['4', '6'],
  years: [4, 6],
  measures: [
    {
      name: 'chest-girth',
      words: 'Chest',
      mark: 'from memory',
      values: [
        [22, 24],
        [24, 24.5, 27],
      ],
    },
    { name: 'arm-length', words: 'Arm', mark: 'derived', values: [10, 33] },
  ],
  notes: [],
};

it('a printed table is a row a size, in its own unit and in millimetres', () => {
  const { rows, measures, ...rest } = readPrintedTable(printed);
  expect(rest).toMatchObject({
    id: 'any',
    title: 'A table',
    publisher: 'Nobody',
    figure: 'child',
    unit: '[in_i]',
    notes: [],
  });
  expect(measures).toEqual([
    { name: 'chest-girth', words: 'Chest', mark: 'from memory' },
    { name: 'arm-length', words: 'Arm', mark: 'derived' },
  ]);
  expect(rows.map(({ table, label, size, ageYears }) => [table, label, size, ageYears])).toEqual([
    ['any', 'Any table 4', '4', 4],
    ['any', 'Any table 6', '6', 6],
  ]);
  expect(rows[0]!.published).toEqual({
    'chest-girth': { low: 22, mid: 23, high: 24 },
    'arm-length': { low: 10, mid: 10, high: 10 },
  });
  expect(rows[1]!.published['chest-girth']).toEqual({ low: 24, mid: 24.5, high: 27 });
  expect(rows[1]!.mm).toEqual({
    'chest-girth': { low: 609.6, mid: 622.3, high: 685.8 },
    'arm-length': { low: 838.2, mid: 838.2, high: 838.2 },
  });
});

it('a table without ages has rows without', () => {
  const { years: _years, ...ageless } = printed;
  expect(readPrintedTable(ageless).rows.map(({ ageYears }) => ageYears)).toEqual([null, null]);
});
