import { MM_PER_UNIT, type LengthUnit, type Note } from '#measure';
import type { BodyDimension } from '../body-dimension.ts';
import type { PublishedSizes, SizeMeasure, SizeRange, SizeRow } from './published-sizes.ts';

/** A cell as printed: one value, `[low, high]`, or a class `[low, centre, high]`. */
type Cell = number | readonly number[];

/** A table as its JSON file holds it: a line a measure, a column a size. JSON has no closed lists, so its words are strings here. */
interface PrintedTable {
  readonly id: string;
  readonly label: string;
  readonly title: string;
  readonly publisher: string;
  readonly figure: string;
  readonly unit: string;
  readonly sizes: readonly string[];
  readonly years?: readonly number[];
  readonly measures: readonly {
    readonly name: string;
    readonly words: string;
    readonly mark: string;
    readonly values: readonly Cell[];
  }[];
  readonly notes: readonly Note[];
}

function rangeOf(cell: Cell): SizeRange {
  const ends = typeof cell === 'number' ? [cell] : cell;
  const low = ends[0]!;
  const high = ends[ends.length - 1]!;
  return { low, mid: ends.length === 3 ? ends[1]! : (low + high) / 2, high };
}

/** The same in mm. What binary fractions leave over of a product is taken off: 33 in are 838.2 mm. */
function inMm({ low, mid, high }: SizeRange, unit: LengthUnit): SizeRange {
  const mm = (size: number): number => Math.round(size * MM_PER_UNIT[unit] * 1e6) / 1e6;
  return { low: mm(low), mid: mm(mid), high: mm(high) };
}

/** Turns a printed table, a line a measure, into rows, a row a size, in its own unit and in millimetres. */
export function readPrintedTable(printed: PrintedTable): PublishedSizes {
  const unit = printed.unit as LengthUnit;
  const row = (size: string, column: number): SizeRow => {
    const cells = printed.measures.map(
      ({ name, values }) => [name as BodyDimension, rangeOf(values[column]!)] as const,
    );
    return {
      table: printed.id,
      size,
      label: `${printed.label} ${size}`,
      ageYears: printed.years?.[column] ?? null,
      published: Object.fromEntries(cells),
      mm: Object.fromEntries(cells.map(([name, range]) => [name, inMm(range, unit)])),
    };
  };
  return {
    id: printed.id,
    label: printed.label,
    title: printed.title,
    publisher: printed.publisher,
    figure: printed.figure as PublishedSizes['figure'],
    unit,
    measures: printed.measures.map(({ name, words, mark }) => ({ name, words, mark }) as SizeMeasure),
    rows: printed.sizes.map(row),
    notes: printed.notes,
  };
}
