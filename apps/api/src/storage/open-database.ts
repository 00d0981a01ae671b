import { DataSource } from 'typeorm';
import type { DatabaseSettings } from '../settings/settings.ts';
import { StartError } from '../settings/start-error.ts';
import { driverOptions, migratingOptions } from './driver.ts';
import { EmbeddedDataSource } from './embedded-data-source.ts';
import { applyPragmas, prepareFiles } from './embedded.ts';
import { migrate } from './migrate.ts';
import { continueIdsAfter } from './new-id.ts';
import { outageReasonOf } from './outage.ts';
import { mustBePrivate } from './private-file.ts';

/** Opens the database, brings it to the newest migration and hands it out ready. @throws StartError when it cannot be used */
export async function openDatabase(database: DatabaseSettings): Promise<DataSource> {
  return database.kind === 'sqlite' ? openEmbedded(database) : openServer(database);
}

type Of<K extends DatabaseSettings['kind']> = Extract<DatabaseSettings, { kind: K }>;

async function openServer(database: Of<'postgres'>): Promise<DataSource> {
  const migrating = await connect(database, new DataSource(migratingOptions(database)));
  await named(database, migrating, migrate);
  await migrating.destroy();
  const dataSource = await connect(database, new DataSource(driverOptions(database)));
  await named(database, dataSource, continueIds);
  return dataSource;
}

async function openEmbedded(database: Of<'sqlite'>): Promise<DataSource> {
  const file = database.file === ':memory:' ? null : database.file;
  if (file !== null) prepareFiles(file);
  const dataSource = await connect(database, new EmbeddedDataSource(driverOptions(database), file));
  await named(database, dataSource, async () => {
    await applyPragmas(dataSource);
    await migrate(dataSource);
    // What an earlier process erased and had no time to take out of the log.
    await dataSource.query('PRAGMA wal_checkpoint(TRUNCATE)');
    await continueIds(dataSource);
    if (file !== null) for (const suffix of ['', '-wal', '-shm']) mustBePrivate(`${file}${suffix}`);
  });
  return dataSource;
}

/** New ids sort after those that are there, also where the clock has been set back since. */
async function continueIds(dataSource: DataSource): Promise<void> {
  for (const { tableName } of dataSource.entityMetadatas) {
    const [row] = await dataSource.query<{ newest: string | null }[]>(`SELECT max(id) AS newest FROM "${tableName}"`);
    if (row?.newest != null) continueIdsAfter(row.newest);
  }
}

async function connect(database: DatabaseSettings, dataSource: DataSource): Promise<DataSource> {
  try {
    return await dataSource.initialize();
  } catch (error) {
    throw error instanceof StartError ? error : unusable(database, error);
  }
}

/** Does something with an open database, which is closed where that fails. @throws StartError for what is no fault of ours */
async function named(
  database: DatabaseSettings,
  dataSource: DataSource,
  work: (dataSource: DataSource) => Promise<void>,
): Promise<void> {
  try {
    await work(dataSource);
  } catch (error) {
    await dataSource.destroy().catch(() => undefined);
    throw outageReasonOf(error) === null ? error : unusable(database, error);
  }
}

/** Names the database without its password. */
function unusable(database: DatabaseSettings, error: unknown): StartError {
  const driverError: unknown = (error as { driverError?: unknown }).driverError ?? error;
  const { code } = driverError as NodeJS.ErrnoException;
  const reason = code ?? (driverError instanceof Error ? driverError.message : String(driverError));
  if (database.kind === 'sqlite') {
    const why = outageReasonOf(error) === 'full' ? `the disk is full: ${reason}` : reason;
    return new StartError(`The database ${database.file} cannot be opened (${why}).`);
  }
  const { host, pathname } = new URL(database.url);
  return new StartError(`The PostgreSQL database ${host}${pathname} cannot be used (${reason}). Check DATABASE_URL.`);
}
