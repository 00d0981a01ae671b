import type { BodyDimension } from '../body-dimension.ts';
import { bodyError } from '../body-errors.ts';
import type { BodySource } from '../source-codes.ts';
import astmMisses from './astm-d5585-misses.json' with { type: 'json' };
import councilBaby from './craft-yarn-council-baby.json' with { type: 'json' };
import councilChild from './craft-yarn-council-child.json' with { type: 'json' };
import councilMan from './craft-yarn-council-man.json' with { type: 'json' };
import councilWoman from './craft-yarn-council-woman.json' with { type: 'json' };
import enMenChest from './en-13402-3-men-chest.json' with { type: 'json' };
import enMenLetters from './en-13402-3-men-letters.json' with { type: 'json' };
import enWomenBust from './en-13402-3-women-bust.json' with { type: 'json' };
import enWomenHip from './en-13402-3-women-hip.json' with { type: 'json' };
import enWomenLetters from './en-13402-3-women-letters.json' with { type: 'json' };
import headGirthByAge from './head-girth-by-age.json' with { type: 'json' };
import type { PublishedSizes, SizeRow } from './published-sizes.ts';
import { readPrintedTable } from './read-printed-table.ts';

const TABLES: readonly PublishedSizes[] = [
  councilWoman,
  councilMan,
  councilChild,
  councilBaby,
  headGirthByAge,
  enWomenLetters,
  enWomenBust,
  enWomenHip,
  enMenLetters,
  enMenChest,
  astmMisses,
].map(readPrintedTable);

/** Every published table the product holds, each with its publisher, the mark of each line, and its traps. */
export function publishedSizes(): readonly PublishedSizes[] {
  return TABLES;
}

/** The table of that id. @throws DomainError `unknown-size-table`, listing those there are. */
export function sizeTable(id: string): PublishedSizes {
  const table = TABLES.find((candidate) => candidate.id === id);
  if (table === undefined) {
    throw bodyError('unknown-size-table', { id, known: TABLES.map((candidate) => candidate.id) });
  }
  return table;
}

/** The row of a size, by its printed name ("M", "6", "12 months"). @throws DomainError `unknown-size`, listing those there are. */
export function sizeRow(table: PublishedSizes, size: string): SizeRow {
  const row = table.rows.find((candidate) => candidate.size === size);
  if (row === undefined) {
    const known = table.rows.map((candidate) => candidate.size);
    throw bodyError('unknown-size', { table: table.label, size, known });
  }
  return row;
}

/** Where a row's value is from. */
export function rowSource(row: SizeRow, dimension: BodyDimension): BodySource {
  const measure = sizeTable(row.table).measures.find(({ name }) => name === dimension);
  return { code: 'size-row', params: { row: row.label, mark: measure?.mark ?? null } };
}
