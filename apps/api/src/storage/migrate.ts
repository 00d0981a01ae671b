import { MigrationExecutor, type DataSource, type EntityManager, type Migration, type QueryRunner } from 'typeorm';
import { StartError } from '../settings/start-error.ts';
import { withMigrationLock } from './migration-lock.ts';

type Counts = ReadonlyMap<string, number>;

/**
 * Runs every pending migration in one transaction, so that an upgrade which fails leaves the database as it was, and
 * compares the row counts of all tables before and after each: one that loses or invents rows is rolled back.
 *
 * Foreign keys are off while SQLite rebuilds a table (dropping the old one would otherwise take its children along)
 * and checked before the commit.
 *
 * @throws StartError where a newer program has migrated the database further
 */
export async function migrate(dataSource: DataSource): Promise<void> {
  await withMigrationLock(dataSource, async () => {
    await mustNotBeNewer(dataSource);
    const pending = await pendingMigrations(dataSource);
    if (pending.length === 0) return;
    await inTransaction(dataSource, async (runner) => {
      for (const migration of pending) await step(dataSource, runner, migration);
    });
  });
}

/** Takes back the newest migration. What its tables held is gone. */
export async function undoLastMigration(dataSource: DataSource): Promise<void> {
  await inTransaction(dataSource, (runner) => new MigrationExecutor(dataSource, runner).undoLastMigration());
}

/** What a database has not been through yet. */
export const pendingMigrations = (dataSource: DataSource): Promise<Migration[]> =>
  new MigrationExecutor(dataSource).getPendingMigrations();

/** The migrations a database has been through that this program does not know. */
async function unknownMigrations(dataSource: DataSource): Promise<string[]> {
  const known = new Set(dataSource.migrations.map(({ name, constructor }) => name ?? constructor.name));
  const executed = await new MigrationExecutor(dataSource).getExecutedMigrations();
  return executed.map(({ name }) => name).filter((name) => !known.has(name));
}

async function mustNotBeNewer(dataSource: DataSource): Promise<void> {
  const unknown = await unknownMigrations(dataSource);
  if (unknown.length === 0) return;
  throw new StartError(
    `The database was made by a newer Easewright (${unknown.join(', ')}). Start that one, or restore a backup of this one.`,
  );
}

async function inTransaction(dataSource: DataSource, work: (runner: QueryRunner) => Promise<void>): Promise<void> {
  const runner = dataSource.createQueryRunner();
  await runner.beforeMigration();
  await runner.startTransaction();
  try {
    await work(runner);
    await runner.commitTransaction();
  } catch (error) {
    await runner.rollbackTransaction().catch(() => undefined); // SQLite may have done so by itself
    throw error;
  } finally {
    await runner.afterMigration();
    await runner.release();
  }
}

async function step(dataSource: DataSource, runner: QueryRunner, migration: Migration): Promise<void> {
  const before = await countRows(runner);
  await new MigrationExecutor(dataSource, runner).executeMigration(migration);
  compare(migration.name, before, await countRows(runner));
  if (dataSource.options.type !== 'sqlite') return;
  const broken = await runner.manager.query<unknown[]>('PRAGMA foreign_key_check');
  if (broken.length > 0)
    throw new Error(`The migration ${migration.name} leaves ${broken.length} rows without what they refer to.`);
}

/** The tables of the database but the list of migrations itself. */
export async function tableNames(manager: EntityManager): Promise<string[]> {
  const rows = await manager.query<{ name: string }[]>(TABLES[manager.connection.options.type] ?? '');
  return rows.map(({ name }) => name);
}

async function countRows(runner: QueryRunner): Promise<Counts> {
  const counts = new Map<string, number>();
  for (const name of await tableNames(runner.manager)) {
    const [row] = await runner.manager.query<{ rows: string | number }[]>(`SELECT count(*) AS rows FROM "${name}"`);
    counts.set(name, Number(row?.rows));
  }
  return counts;
}

const TABLES: Readonly<Record<string, string>> = {
  sqlite: `SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name <> 'migrations'`,
  postgres: `SELECT tablename AS name FROM pg_tables WHERE schemaname = current_schema() AND tablename <> 'migrations'`,
};

function compare(migration: string, before: Counts, after: Counts): void {
  for (const [table, rows] of before) {
    const left = after.get(table) ?? 0;
    if (left !== rows)
      throw new Error(
        `The migration ${migration} would leave ${left} of ${rows} rows in ${table}; it was rolled back.`,
      );
  }
}
