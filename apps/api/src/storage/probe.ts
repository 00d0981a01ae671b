import type { EntityManager } from 'typeorm';
import { Outage } from './outage.ts';

/** Writes the page that SQLite's header is on, as it was. */
export async function probeFile(manager: EntityManager): Promise<void> {
  await manager.query('PRAGMA user_version = 0');
}

/** Has PostgreSQL write a transaction of its own into its log. @throws Outage where it only answers reads */
export async function probeServer(manager: EntityManager): Promise<void> {
  const sql = `SELECT current_setting('transaction_read_only') AS "readOnly", pg_current_xact_id()`;
  const [row] = await manager.query<{ readOnly: string }[]>(sql);
  if (row?.readOnly === 'on') throw new Outage('read-only', 'no');
}
