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

/** The rows in so many parts, row by row: each part is tried by a model made from all others. */
export function folds(rows: AllRows, count: number): { readonly made: AllRows; readonly tried: AllRows }[] {
  const every = (f: (columns: Columns) => Columns): AllRows => {
    const of = (sex: 'woman' | 'man') => ({
      in1988: f(rows[sex].in1988),
      in2012: f(rows[sex].in2012),
      nhanes: f(rows[sex].nhanes),
    });
    return { woman: of('woman'), man: of('man') };
  };
  return Array.from({ length: count }, (_, part) => ({
    made: every((columns) => pickRows(columns, (row) => row % count !== part)),
    tried: every((columns) => pickRows(columns, (row) => row % count === part)),
  }));
}

/** Two halves of every survey: a model is made from one and tried on the other. */
export const halves = (rows: AllRows) => folds(rows, 2)[1]!;
