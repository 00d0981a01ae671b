import { setTimeout as delay } from 'node:timers/promises';
import type { DataSource } from 'typeorm';
import { StartError } from '../settings/start-error.ts';

/** The number of the advisory lock; PostgreSQL keeps them apart by database. */
const LOCK = 4_114_000_001;
const LOOK_MS = 100;
const PATIENCE_MS = 10 * 60_000;

/** One process at a time migrates a PostgreSQL; an embedded database has one process anyway. @throws StartError after ten minutes */
export async function withMigrationLock(dataSource: DataSource, work: () => Promise<void>): Promise<void> {
  if (dataSource.options.type !== 'postgres') return work();
  const runner = dataSource.createQueryRunner();
  const call = async (name: string): Promise<boolean> => {
    const [row] = (await runner.query(`SELECT ${name}(${LOCK}) AS done`)) as { done: boolean }[];
    return row?.done === true;
  };
  try {
    for (const begun = performance.now(); !(await call('pg_try_advisory_lock')); await delay(LOOK_MS)) {
      if (performance.now() - begun > PATIENCE_MS) {
        throw new StartError(
          'Another process has been migrating the database for ten minutes. Look at that one first.',
        );
      }
    }
    try {
      await work();
    } finally {
      await call('pg_advisory_unlock');
    }
  } finally {
    await runner.release();
  }
}
