import { MoreThan, type EntityManager, type EntitySchema } from 'typeorm';
import { ENTITIES } from '../storage/entities.ts';

/** Rows that are read and written together. */
const BATCH = 200;

/** Tables in an order in which every row comes after what it refers to. */
const TABLES = ENTITIES as readonly EntitySchema<{ id: string }>[];

/** Puts all rows of one database in the place of all rows of another. Each manager is within a transaction. */
export async function replaceRows(from: EntityManager, to: EntityManager): Promise<void> {
  for (const table of [...TABLES].reverse()) await to.createQueryBuilder().delete().from(table).execute();
  for (const table of TABLES) {
    for (let rows = await batchAfter(from, table, ''); rows.length > 0;) {
      await to.insert(table, rows);
      rows = await batchAfter(from, table, rows.at(-1)?.id ?? '');
    }
  }
}

function batchAfter(manager: EntityManager, table: EntitySchema<{ id: string }>, id: string) {
  return manager.find(table, { where: { id: MoreThan(id) }, order: { id: 'ASC' }, take: BATCH });
}
