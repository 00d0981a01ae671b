import type { Figure } from '../body.ts';
import type { BodyNote, BodyNoteCodes } from '../note-codes.ts';
import { nearestRow, type Lies, type NearestRow } from './nearest-row.ts';
import type { SizeRow } from './published-sizes.ts';
import { sizeTable } from './size-tables.ts';

/** What a look-up found. `row` is null where none fits. The note says which was read and how well it fits, or why none does. */
export interface RowFound {
  readonly row: SizeRow | null;
  /** The row that fits, else the end of the table that is nearest; null where there is no table. */
  readonly nearest: SizeRow | null;
  /** Null where there is no table to look in. */
  readonly lies: Lies | null;
  readonly note: BodyNote;
}

type Sized = Exclude<Figure, 'unsaid'>;
type LookedUp = BodyNoteCodes['size-row']['lookedUp'];
type Size = BodyNoteCodes['size-row']['size'];

export const TABLE_OF_FIGURE: Readonly<Record<Sized, string>> = {
  woman: 'craft-yarn-council-woman',
  man: 'craft-yarn-council-man',
  child: 'craft-yarn-council-child',
  baby: 'craft-yarn-council-baby',
};

/** A tape in centimetres is read to half of one, and the tables are printed in inches: so near is the same, mm (assumed). */
const READING = 2.5;

/**
 * The row of the Craft Yarn Council's table for a figure that a chest (bust) girth in mm belongs to. In the gap between two
 * sizes the nearer is read and the note says so; beyond an end by more than half such a gap none is.
 */
export function rowForChest(figure: Figure, chestMm: number): RowFound {
  if (figure === 'unsaid') return { row: null, nearest: null, lies: null, note: { code: 'no-size-table', params: {} } };
  const found = nearestRow(sizeTable(TABLE_OF_FIGURE[figure]).rows, (row) => row.mm['chest-girth'], chestMm, READING);
  return { ...whatFits(found), note: noteOn(found, figure, { by: 'chest', chestMm }) };
}

/** The same by age in years, for a child or a baby whose chest is not known; the adults' tables have no ages. */
export function rowForAge(figure: 'child' | 'baby', ageYears: number): RowFound {
  const point = ({ ageYears: age }: SizeRow) => (age === null ? undefined : { low: age, mid: age, high: age });
  const found = nearestRow(sizeTable(TABLE_OF_FIGURE[figure]).rows, point, ageYears);
  return { ...whatFits(found), note: noteOn(found, figure, { by: 'age', ageYears }) };
}

const whatFits = ({ row, lies, neighbours }: NearestRow) => ({ row, lies, nearest: row ?? neighbours[0] ?? null });

function noteOn(found: NearestRow, figure: Sized, lookedUp: LookedUp): BodyNote {
  const { label: table, publisher } = sizeTable(TABLE_OF_FIGURE[figure]);
  const [first, second] = found.neighbours.map((row) => sizeOf(row, lookedUp));
  const params = { lookedUp, table };
  const source = { code: 'publication', params: { title: publisher } } as const;
  if (found.lies === 'in') return { code: 'size-row', params: { ...params, size: first! }, source };
  if (found.lies === 'between') {
    const read = found.row!.size;
    return { code: 'between-sizes', params: { ...params, smaller: first!, larger: second!, read }, source };
  }
  const { lies: side } = found;
  return { code: 'beyond-sizes', params: { ...params, end: first!, side, read: found.row !== null, figure }, source };
}

function sizeOf({ size, mm }: SizeRow, { by }: LookedUp): Size {
  const chest = by === 'chest' ? mm['chest-girth'] : undefined;
  return { size, chestMm: chest === undefined ? null : { lowMm: chest.low, highMm: chest.high } };
}
