import { join } from 'node:path';
import { readColumns, type Columns } from './columns.ts';
import type { Sex } from './names.ts';

/** The rows of one sex, as published. */
export interface SurveyRows {
  readonly in1988: Columns;
  readonly in2012: Columns;
  readonly nhanes: Columns;
}

export type AllRows = Readonly<Record<Sex, SurveyRows>>;

/** The five files of the data folder. */
export function readAllRows(folder: string): AllRows {
  const of = (word: 'female' | 'male'): SurveyRows => ({
    in1988: readColumns(join(folder, `ansur-i-1988-${word}.csv`)),
    in2012: readColumns(join(folder, `ansur-ii-2012-${word}.csv`)),
    nhanes: readColumns(join(folder, 'nhanes-2017-2020.csv'), { sex: word }),
  });
  return { woman: of('female'), man: of('male') };
}
