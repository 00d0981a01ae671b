import { csvLine, toCsv } from '#target-sheet';
import type { Format, NameFault } from './format.ts';
import { hasOwnNames, namedFields } from './named-fields.ts';

/** A table: one line under the planner's columns, or the sheet's dimensions one a line. */
export const csv: Format = {
  contentType: 'text/csv; charset=utf-8',
  rounds: true,
  nameFaults: columnFaults,
  write: (sheet, takes) => {
    const { rounded, names, value, warnings } = namedFields(sheet, takes);
    const payload = hasOwnNames(takes)
      ? csvLine(Object.values(takes.names)) + csvLine(names.map((name) => value(name) ?? null))
      : toCsv(rounded);
    return { payload, warnings };
  },
};

function columnFaults(names: Readonly<Record<string, string>>): NameFault[] {
  const first = new Map<string, string>();
  return Object.entries(names).flatMap(([ourName, column]) => {
    const message = columnFault(ourName, column, first.get(column));
    if (message !== null) return [{ code: 'their-name', ourName, message }];
    first.set(column, ourName);
    return [];
  });
}

function columnFault(ourName: string, column: string, other: string | undefined): string | null {
  if (column.trim() === '') return `${ourName} needs the name of a column.`;
  if (/^[=+\-@]/.test(column))
    return `A spreadsheet would run "${column}" as a formula; begin the column with a letter.`;
  return other === undefined ? null : `The column "${column}" is filled by ${other} already.`;
}
