import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, it } from 'vitest';
import { pickRows, type Columns } from '../../../scripts/body-model/columns.ts';
import { readAllRows, type AllRows } from '../../../scripts/body-model/survey-rows.ts';

/** Where the rows lie beside a checkout, if they do. They are not part of the project. */
const FOLDER = fileURLToPath(new URL('../../../../shared/data/anthropometry/', import.meta.url));

/** Tests against the survey rows; one line says that they were skipped where there are none. */
export function describeWithRows(name: string, tests: (rows: AllRows) => void): void {
  describe(name, () => {
    if (existsSync(FOLDER)) tests(readAllRows(FOLDER));
    else it.skip('skipped: the survey rows are not here', () => {});
  });
}

/** Two halves of every survey, row by row: a model is made from one and tried on the other. */
export function halves(rows: AllRows): { readonly made: AllRows; readonly tried: AllRows } {
  const every = (f: (columns: Columns) => Columns): AllRows => {
    const of = (sex: 'woman' | 'man') => ({
      in1988: f(rows[sex].in1988),
      in2012: f(rows[sex].in2012),
      nhanes: f(rows[sex].nhanes),
    });
    return { woman: of('woman'), man: of('man') };
  };
  return {
    made: every((columns) => pickRows(columns, (row) => row % 2 === 0)),
    tried: every((columns) => pickRows(columns, (row) => row % 2 === 1)),
  };
}
