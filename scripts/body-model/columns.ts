import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

/** A survey's rows, column by column. A cell without a number is NaN. */
export type Columns = Readonly<Record<string, readonly number[]>>;

/** The rows of a survey file as published: a header line, then a line a person. Words are kept out (`where` picks by them). */
export function readColumns(path: string, where: Readonly<Record<string, string>> = {}): Columns {
  const records = parse(readFileSync(path, 'utf8'), { columns: true, skip_empty_lines: true }) as Record<
    string,
    string
  >[];
  const rows = records.filter((record) => Object.entries(where).every(([name, word]) => record[name] === word));
  const names = Object.keys(records[0] ?? {}).filter((name) => !(name in where));
  return Object.fromEntries(
    names.map((name) => [name, rows.map((row) => (row[name] === '' ? Number.NaN : Number(row[name])))]),
  );
}

export const rowCount = (columns: Columns): number => Object.values(columns)[0]?.length ?? 0;

/** The rows whose number passes, e.g. one fold. */
export function pickRows(columns: Columns, passes: (row: number) => boolean): Columns {
  return Object.fromEntries(
    Object.entries(columns).map(([name, values]) => [name, values.filter((_, row) => passes(row))]),
  );
}

/** A new column out of others, row by row. */
export function derive(columns: Columns, names: readonly string[], f: (...values: number[]) => number): number[] {
  const parts = names.map((name) => {
    const values = columns[name];
    if (values === undefined) throw new Error(`The survey file has no column ${name}.`);
    return values;
  });
  return parts[0]!.map((_, row) => f(...parts.map((values) => values[row]!)));
}
