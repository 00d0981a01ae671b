import type { AnyDimension } from '../target-sheet.ts';
import { cmText, decimalText, inchCell, rangeText, tapeText, type MakersUnit } from './length-text.ts';
import { inWords, widthOf, wrap } from './lines.ts';

type WithValue = AnyDimension & { readonly value: number };

interface Column {
  readonly title: string;
  readonly cell: (dimension: WithValue, unit: MakersUnit) => string;
}

const COLUMNS: readonly Column[] = [
  { title: 'cm', cell: ({ value }) => cmText(value) },
  { title: 'in   ', cell: ({ value }) => inchCell(value) },
  { title: '±', cell: ({ u }, unit) => (u === undefined ? '' : decimalText(u, unit)) },
  {
    title: 'anywhere in',
    cell: ({ value, low, high }, unit) =>
      low === undefined || high === undefined ? '' : rangeText({ value, low, high }, unit),
  },
];
const ON_PIECES: readonly Column[] = [
  {
    title: 'made by',
    cell: (dimension) => ('axis' in dimension ? (dimension.axis === 'across' ? 'stitches' : 'rows') : ''),
  },
];
const WITH_SEAMS: Column = {
  title: 'seamed',
  cell: (dimension, unit) => (hasSeams(dimension) ? tapeText(dimension.value + dimension.allowance, unit) : ''),
};
const UNWASHED: Column = {
  title: 'unwashed',
  cell: (dimension, unit) =>
    'asMade' in dimension && dimension.asMade !== null ? tapeText(dimension.asMade, unit) : '',
};

/** Less than shows in the table, mm. */
const UNSEEN = 0.05;

/** Dimensions in mm as an aligned table; the ± and the limits in the maker's unit, what has no advice with the measure to take. */
export function dimensionTable(dimensions: readonly AnyDimension[], unit: MakersUnit): string[] {
  const columns = [...COLUMNS, ...(dimensions.some((each) => 'axis' in each) ? ON_PIECES : [])];
  if (dimensions.some(differsUnwashed)) columns.splice(3, 0, UNWASHED);
  else if (dimensions.some(hasSeams)) columns.splice(3, 0, WITH_SEAMS);
  const given = dimensions.filter(hasValue);
  const rows = [
    ['', ...columns.map(({ title }) => title)],
    ...given.map((dimension) => [label(dimension), ...columns.map(({ cell }) => cell(dimension, unit))]),
  ];
  const widths = ['', ...columns].map((_, column) => Math.max(...rows.map((row) => widthOf(row[column] ?? ''))));
  const lines = rows.map((row) =>
    row
      .map((cell, column) => (column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0)))
      .join('  ')
      .trimEnd(),
  );
  return [...(given.length > 0 ? lines.map((line) => `  ${line}`) : []), ...dimensions.flatMap(withoutValue)];
}

const hasValue = (dimension: AnyDimension): dimension is WithValue => dimension.value !== null;

/** Whether a piece has an allowance beyond this length of it. */
export const hasSeams = <T extends AnyDimension>(dimension: T): dimension is T & { readonly allowance: number } =>
  'allowance' in dimension && dimension.allowance > 0;

/** Whether a piece is of another size before its first wash. */
export const differsUnwashed = (dimension: AnyDimension): boolean =>
  'asMade' in dimension &&
  dimension.asMade !== null &&
  Math.abs(dimension.asMade - (dimension.value ?? 0) - dimension.allowance) > UNSEEN;

function label(dimension: AnyDimension): string {
  const rib = 'fabric' in dimension && dimension.fabric === 'rib' && dimension.name !== 'rib-depth';
  return inWords(dimension.name) + (rib ? ' (rib)' : '');
}

function withoutValue({ name, value, noAdvice }: AnyDimension): string[] {
  if (value !== null || !noAdvice) return [];
  return wrap(`${inWords(name)}: no advice. ${noAdvice.reason}`, '  ', '    ');
}
