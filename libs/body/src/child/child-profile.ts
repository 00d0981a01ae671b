import type { BodyProfile } from '../body-profile.ts';
import type { BodyMissing } from '../missing-codes.ts';
import type { BodyNote } from '../note-codes.ts';
import { missingFrom, type ProfileValues } from '../profile-values.ts';
import { rowProfileValues } from '../row-profile-values.ts';
import type { SizeRow } from '../sizes/published-sizes.ts';
import { rowForAge, rowForChest, TABLE_OF_FIGURE, type RowFound } from '../sizes/row-for-chest.ts';
import { sizeTable } from '../sizes/size-tables.ts';
import { ageByMeasures } from './age-by-measures.ts';
import { applyFormulas } from './apply-formulas.ts';
import { beyondTable } from './beyond-table.ts';
import { childFormulas } from './child-formulas.ts';
import { napeToCuffFits } from './nape-to-cuff.ts';

/**
 * Fills in what was not measured on a child or a baby: the row of the published table by chest, by age where there is no chest, else the row that its other
 * measures come nearest to; then the formulas for what no table has. Beyond an end of the table the end's row is scaled and wider. Never the adult model. Where
 * nothing at all is known nothing is filled in.
 */
export function childProfile(figure: 'child' | 'baby', ageYears: number | null, measured: ProfileValues): BodyProfile {
  const found = findRow(figure, ageYears, measured);
  if (found === null) {
    const reason: BodyMissing = { code: 'chest-or-age-needed', params: { figure } };
    return {
      figure,
      ageYears,
      values: measured,
      covariance: null,
      missing: missingFrom(measured, () => reason),
      notes: [],
    };
  }

  const row = found.nearest!;
  const age = ageYears ?? row.ageYears!;
  const read = { ...fromRow(row, measured, found.row === null), ...measured };
  const { values, covariance } = applyFormulas(read, childFormulas(figure, age));
  const missing = missingFrom(values, () => ({ code: 'not-published', params: { figure } }));
  const notes = [found.note, ...(ageYears === null ? [ageNote(row)] : []), ...napeNotes(row, read)];
  return { figure, ageYears: age, values, covariance, missing, notes };
}

function findRow(figure: 'child' | 'baby', ageYears: number | null, measured: ProfileValues): RowFound | null {
  const chest = measured['chest-girth'];
  if (chest !== undefined) return rowForChest(figure, chest.value);
  const age = ageYears ?? ageByMeasures(sizeTable(TABLE_OF_FIGURE[figure]), measured);
  return age === null ? null : rowForAge(figure, age);
}

/** A measured arm is the child's own: its nape to cuff is worked out from it rather than read beside another arm. */
function fromRow(row: SizeRow, measured: ProfileValues, beyond: boolean): ProfileValues {
  const chest = measured['chest-girth'];
  const inRow = rowProfileValues(row, chest === undefined ? 'age' : 'chest');
  const ratio = chest === undefined ? 1 : chest.value / inRow['chest-girth']!.value;
  const values = beyond ? beyondTable(inRow, ratio) : inRow;
  if (measured['underarm-length'] === undefined) return values;
  return Object.fromEntries(Object.entries(values).filter(([name]) => name !== 'nape-to-cuff'));
}

const ageNote = (row: SizeRow): BodyNote => ({
  code: 'age-assumed',
  params: { ageYears: row.ageYears! },
  source: { code: 'assumed', params: {} },
});

function napeNotes(row: SizeRow, read: ProfileValues): readonly BodyNote[] {
  if (read['nape-to-cuff'] !== undefined || row.mm['nape-to-cuff'] === undefined) return [];
  const { publisher } = sizeTable(row.table);
  return [
    {
      code: 'nape-to-cuff-from-arm',
      params: { armMeasured: napeToCuffFits(row) },
      source: { code: 'publication', params: { title: publisher } },
    },
  ];
}
