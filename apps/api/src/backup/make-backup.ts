import { existsSync } from 'node:fs';
import { DataSource } from 'typeorm';
import type { DatabaseSettings } from '../settings/settings.ts';
import { driverOptions, migratingOptions } from '../storage/driver.ts';
import { embeddedTransaction } from '../storage/embedded-transaction.ts';
import { migrate, pendingMigrations } from '../storage/migrate.ts';
import { SqliteConnection } from '../storage/sqlite-connection.ts';
import { BackupError } from './backup-error.ts';
import { checkBackup, type BackupContents } from './check-backup.ts';
import { replaceRows } from './copy-rows.ts';
import { writeWhole } from './whole-file.ts';

/**
 * Writes all that is kept, as it stands at one moment, into a new file: an SQLite database, whichever the database is, so
 * that each can be restored into the other. The service may be running.
 *
 * @throws BackupError
 */
export async function makeBackup(database: DatabaseSettings, file: string): Promise<BackupContents> {
  let contents: BackupContents = {};
  await writeWhole(file, async (part) => {
    await (database.kind === 'sqlite' ? copyFile(database.file, part) : copyServer(database, part));
    contents = await checkBackup(part);
  });
  return contents;
}

async function copyFile(from: string, to: string): Promise<void> {
  if (!existsSync(from))
    throw new BackupError(`There is no database ${from}. DATA_DIR and SQLITE_FILE say where it is.`);
  await SqliteConnection.with(from, async (source) => {
    await source.query('PRAGMA busy_timeout = 5000');
    await source.query('VACUUM INTO ?', [to]);
  });
}

/** In one transaction that sees one moment. */
async function copyServer(database: DatabaseSettings, to: string): Promise<void> {
  const target = await new DataSource(driverOptions({ kind: 'sqlite', file: to })).initialize();
  try {
    const source = await new DataSource(migratingOptions(database)).initialize();
    try {
      if ((await pendingMigrations(source)).length > 0) {
        throw new BackupError('The database is of an older Easewright. Start this one once, then make the backup.');
      }
      await migrate(target);
      await source.transaction('REPEATABLE READ', (from) =>
        embeddedTransaction(target.manager, (manager) => replaceRows(from, manager)),
      );
      await target.query('PRAGMA journal_mode = DELETE');
    } finally {
      await source.destroy();
    }
  } finally {
    await target.destroy();
  }
}
