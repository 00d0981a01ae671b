import type { AnyDimension, TargetSheet } from './target-sheet.ts';

type Cell = string | number | null;

const COLUMNS = ['piece', 'name', 'axis', 'value', 'unit', 'low', 'high', 'as made'];

/** Lengths lose the noise of their arithmetic: the sixth decimal of an inch is 25 nanometres. */
const DECIMALS = 6;

/** A sheet as CSV (RFC 4180, with a header): one row a dimension, the finished garment’s first; what has no value is empty. */
export function toCsv(sheet: TargetSheet): string {
  const row = (piece: string, dimension: AnyDimension): Cell[] => [
    piece,
    dimension.name,
    'axis' in dimension ? dimension.axis : null,
    dimension.value,
    sheet.unit,
    dimension.low ?? null,
    dimension.high ?? null,
    'asMade' in dimension ? dimension.asMade : null,
  ];
  return [
    COLUMNS,
    ...sheet.assembled.map((dimension) => row('assembled', dimension)),
    ...sheet.pieces.flatMap(({ piece, dimensions }) => dimensions.map((dimension) => row(piece, dimension))),
  ]
    .map(csvLine)
    .join('');
}

/** One line of CSV with its line end: cells with a comma, a quote or a line break are quoted, quotes doubled (RFC 4180, section 2). */
export function csvLine(cells: readonly Cell[]): string {
  return cells.map(written).join(',') + '\r\n';
}

function written(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(Number(cell.toFixed(DECIMALS)));
  const harmless = isFormula(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** A spreadsheet would run it: a text that starts so is kept a text by an apostrophe. */
const isFormula = (text: string): boolean => /^[=+\-@\t\r\n＝＋－＠]/.test(text);
