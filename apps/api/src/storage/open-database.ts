import { DataSource } from 'typeorm';
import type { DatabaseSettings } from '../settings/settings.ts';
import { StartError } from '../settings/start-error.ts';
import { driverOptions } from './driver.ts';
import { applyPragmas, prepareFolder } from './embedded.ts';
import { migrate } from './migrate.ts';

/** Opens the database, brings it to the newest migration and hands it out ready. @throws StartError when it cannot be used */
export async function openDatabase(database: DatabaseSettings): Promise<DataSource> {
  if (database.kind === 'sqlite') prepareFolder(database.file);
  const dataSource = new DataSource(driverOptions(database));
  try {
    await dataSource.initialize();
  } catch (error) {
    throw new StartError(unreachable(database, error));
  }
  try {
    if (database.kind === 'sqlite') await applyPragmas(dataSource);
    await migrate(dataSource);
    return dataSource;
  } catch (error) {
    await dataSource.destroy();
    throw error;
  }
}

/** Names the database without its password. */
function unreachable(database: DatabaseSettings, error: unknown): string {
  const reason = (error as NodeJS.ErrnoException).code ?? (error instanceof Error ? error.message : String(error));
  if (database.kind === 'sqlite') return `The database ${database.file} cannot be opened (${reason}).`;
  const { host, pathname } = new URL(database.url);
  return `The PostgreSQL database ${host}${pathname} cannot be used (${reason}). Check DATABASE_URL.`;
}
