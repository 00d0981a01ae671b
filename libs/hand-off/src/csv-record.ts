/** One field of CSV (RFC 4180): quoted where it holds a comma, a quote or a line's end. */
const field = (value: string): string => (/[",\r\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value);

const line = (values: readonly string[]): string => `${values.map(field).join(',')}\r\n`;

/** CSV of one record under its columns (RFC 4180); what has no value is an empty field. */
export function csvRecord(columns: readonly string[], values: readonly (string | number | undefined)[]): string {
  return line(columns) + line(values.map((value) => (value === undefined ? '' : String(value))));
}
