import type { BodyDimension } from '../body-dimension.ts';
import type { BodyProfile } from '../body-profile.ts';
import type { BodyMissing } from '../missing-codes.ts';
import type { BodyNote } from '../note-codes.ts';
import { missingFrom, type ProfileValues } from '../profile-values.ts';
import { rowProfileValues } from '../row-profile-values.ts';
import type { SizeRow } from '../sizes/published-sizes.ts';
import { rowForAge, rowForChest, type RowFound } from '../sizes/row-for-chest.ts';
import { sizeTable } from '../sizes/size-tables.ts';
import { applyFormulas } from './apply-formulas.ts';
import { childFormulas } from './child-formulas.ts';
import { HEAD_AGES } from './head-girth-by-age.ts';
import { napeToCuffFits } from './nape-to-cuff.ts';

const FROM_AGE: readonly BodyDimension[] = ['wrist-girth', 'hand-girth', 'head-girth'];

/**
 * Fills in what was not measured on a child or a baby: the row of the published table by chest, or by age where there is no chest;
 * then the formulas for what no table has. Never the adult model. Without chest and age nothing is filled in.
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

  const { row } = found;
  const age = ageYears ?? row?.ageYears ?? null;
  const read = row === null ? measured : { ...fromRow(row, measured), ...measured };
  // Outside the table the chest's formulas are outside what they were made for.
  const formulas = childFormulas(figure, age).filter(({ times }) => row !== null || times['chest-girth'] === undefined);
  const { values, covariance } = applyFormulas(read, formulas);
  const missing = missingFrom(values, (name) => {
    if (row === null) return { code: 'no-size-row', params: { note: found.note } };
    if (FROM_AGE.includes(name)) return { code: 'known-by-age', params: HEAD_AGES };
    return { code: 'not-published', params: { figure } };
  });
  const ageAssumed = ageYears === null && row !== null;
  const notes = [found.note, ...(ageAssumed ? [ageNote(row)] : []), ...(row !== null ? napeNotes(row, read) : [])];
  return { figure, ageYears: age, values, covariance, missing, notes };
}

function findRow(
  figure: 'child' | 'baby',
  ageYears: number | null,
  { 'chest-girth': chest }: ProfileValues,
): RowFound | null {
  if (chest !== undefined) return rowForChest(figure, chest.value);
  return ageYears === null ? null : rowForAge(figure, ageYears);
}

/** A measured arm is the child's own: its nape to cuff is worked out from it rather than read beside another arm. */
function fromRow(row: SizeRow, measured: ProfileValues): ProfileValues {
  const values = rowProfileValues(row, measured['chest-girth'] === undefined ? 'age' : 'chest');
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
