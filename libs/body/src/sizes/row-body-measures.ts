import { BODY_DIMENSIONS, type BodyDimension } from '../body-dimension.ts';
import type { BodyMeasure } from '../body.ts';
import { napeToCuffFits } from '../child/nape-to-cuff.ts';
import type { SizeRow } from './published-sizes.ts';
import { rowSource } from './size-tables.ts';

/** The dimensions of a row that a body may be made of, mm: its midpoints, less a nape to cuff that cannot be that of its own arm. */
export function rowValues(row: SizeRow): readonly (readonly [name: BodyDimension, mm: number])[] {
  return BODY_DIMENSIONS.flatMap((name) => {
    const range = row.mm[name];
    return range === undefined || (name === 'nape-to-cuff' && !napeToCuffFits(row)) ? [] : [[name, range.mid] as const];
  });
}

/** A row as the measures of a body, for a run of sizes; `how` is `table`, mm. */
export function rowBodyMeasures(row: SizeRow): readonly BodyMeasure[] {
  return rowValues(row).map(([name, value]) => ({ name, value, how: 'table', from: rowSource(row, name) }));
}
