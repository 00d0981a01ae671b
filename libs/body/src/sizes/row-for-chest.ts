import { formatLength, inchesText, type Note } from '#measure';
import type { Figure } from '../body.ts';
import { ageText } from '../age-text.ts';
import { nearestRow, type Lies, type NearestRow } from './nearest-row.ts';
import type { SizeRow } from './published-sizes.ts';
import { sizeTable } from './size-tables.ts';

/** What a look-up found. `row` is null where none may be read. The note says which was read and how well it fits, or why none was. */
export interface RowFound {
  readonly row: SizeRow | null;
  /** Null where there is no table to look in. */
  readonly lies: Lies | null;
  readonly note: Note;
}

type Sized = Exclude<Figure, 'unsaid'>;

const TABLE: Readonly<Record<Sized, string>> = {
  woman: 'craft-yarn-council-woman',
  man: 'craft-yarn-council-man',
  child: 'craft-yarn-council-child',
  baby: 'craft-yarn-council-baby',
};

/** What to do beyond a table's end: some go on in another figure's. */
const BEYOND: Readonly<Record<Sized, Readonly<Record<'below' | 'above', string>>>> = {
  woman: { below: 'measure instead', above: 'measure instead' },
  man: { below: 'measure instead', above: 'measure instead' },
  child: { below: 'measure, or say a baby', above: 'measure, or say a woman or a man' },
  baby: { below: 'measure instead', above: 'measure, or say a child' },
};

/** A tape in centimetres is read to half of one, and the tables are printed in inches: so near is the same, mm (assumed). */
const READING = 2.5;

/**
 * The row of the Craft Yarn Council's table for a figure that a chest (bust) girth in mm belongs to. In the gap between two
 * sizes the nearer is read and the note says so; beyond an end by more than half such a gap none is.
 */
export function rowForChest(figure: Figure, chestMm: number): RowFound {
  if (figure === 'unsaid') {
    const text = 'The size tables are for a woman, a man, a child or a baby: say which is nearest.';
    return { row: null, lies: null, note: { code: 'no-size-table', text } };
  }
  const found = nearestRow(sizeTable(TABLE[figure]).rows, (row) => row.mm['chest-girth'], chestMm, READING);
  const inches = (row: SizeRow) => {
    const { low, high } = row.mm['chest-girth']!;
    return low === high ? ` (${inchesText(low)} in)` : ` (${inchesText(low)} to ${inchesText(high)} in)`;
  };
  const chest = `A chest of ${formatLength(chestMm, 'cm')} (${formatLength(chestMm, '[in_i]')})`;
  return { row: found.row, lies: found.lies, note: noteOn(found, figure, chest, inches) };
}

/** The same by age in years, for a child or a baby whose chest is not known; the adults' tables have no ages. */
export function rowForAge(figure: 'child' | 'baby', ageYears: number): RowFound {
  const point = ({ ageYears: age }: SizeRow) => (age === null ? undefined : { low: age, mid: age, high: age });
  const found = nearestRow(sizeTable(TABLE[figure]).rows, point, ageYears);
  return { row: found.row, lies: found.lies, note: noteOn(found, figure, `An age of ${ageText(ageYears)}`, () => '') };
}

function noteOn(found: NearestRow, figure: Sized, what: string, range: (row: SizeRow) => string): Note {
  const { label, publisher } = sizeTable(TABLE[figure]);
  const sizes = found.neighbours.map((row) => row.size + range(row)).join(' and ');
  const read = found.row?.size;
  switch (found.lies) {
    case 'in':
      return { code: 'size-row', text: `${what} is size ${sizes} of ${label}.`, source: publisher };
    case 'between': {
      const text = `${what} lies between sizes ${sizes} of ${label}, in neither; ${read} is nearer and was read.`;
      return { code: 'between-sizes', text, source: publisher };
    }
    case 'below':
    case 'above': {
      const end = found.lies === 'below' ? 'smallest' : 'largest';
      const then = read === undefined ? `: ${BEYOND[figure][found.lies]}` : '; that size was read';
      const text = `${what} lies ${found.lies} ${sizes}, the ${end} size of ${label}${then}.`;
      return { code: 'beyond-sizes', text, source: publisher };
    }
  }
}
