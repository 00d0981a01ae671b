import type { TheirNameFault } from '#advice-text';
import type { DomainError } from '#measure';
import { csvLine, toCsv } from '#target-sheet';
import { theirNameError } from '../their-name-error.ts';
import type { Format } from './format.ts';
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

function columnFaults(names: Readonly<Record<string, string>>): DomainError[] {
  const first = new Map<string, string>();
  return Object.entries(names).flatMap(([ourName, column]) => {
    const fault = columnFault(ourName, column, first.get(column));
    if (fault !== null) return [theirNameError(ourName, fault)];
    first.set(column, ourName);
    return [];
  });
}

/** What is wrong with a column; `by` is the name that fills one of that name already. */
function columnFault(ourName: string, column: string, by: string | undefined): TheirNameFault | null {
  if (column.trim() === '') return { code: 'column-unnamed', params: { ourName } };
  if (/^[=+\-@]/.test(column)) return { code: 'column-is-formula', params: { column } };
  return by === undefined ? null : { code: 'column-filled-already', params: { column, by } };
}
