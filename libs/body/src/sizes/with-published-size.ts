import { DomainError } from '#measure';
import type { Body } from '../body.ts';
import { rowBodyMeasures } from './row-body-measures.ts';
import { sizeRow, sizeTable } from './size-tables.ts';

/** A size that somebody buys, by the id of its table and its printed name. */
export interface PublishedSize {
  readonly table: string;
  readonly size: string;
}

/**
 * A body with a published size as evidence: it stands for every measure of its row that was not taken. A figure that was not said is the table's, and an age its size's.
 * @throws DomainError `unknown-size-table` or `unknown-size`, with a pointer into the body.
 */
export function withPublishedSize(body: Body, { table: id, size }: PublishedSize): Body {
  const table = at('/size/table', () => sizeTable(id));
  const row = at('/size/size', () => sizeRow(table, size));
  const taken = body.measures.map(({ name }) => name);
  return {
    figure: body.figure === 'unsaid' ? table.figure : body.figure,
    ageYears: body.ageYears ?? row.ageYears,
    measures: [...body.measures, ...rowBodyMeasures(row).filter(({ name }) => !taken.includes(name))],
  };
}

function at<T>(pointer: string, find: () => T): T {
  try {
    return find();
  } catch (error) {
    throw error instanceof DomainError ? error.at(pointer) : error;
  }
}
