import { copyFileSync, existsSync, mkdtempSync, renameSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { DataSource } from 'typeorm';
import type { DatabaseSettings } from '../settings/settings.ts';
import { driverOptions } from '../storage/driver.ts';
import { prepareFiles } from '../storage/embedded.ts';
import { migrate } from '../storage/migrate.ts';
import { openDatabase } from '../storage/open-database.ts';
import { makePrivate } from '../storage/private-file.ts';
import { ProcessLock } from '../storage/process-lock.ts';
import { SqliteConnection } from '../storage/sqlite-connection.ts';
import { checkBackup, type BackupContents } from './check-backup.ts';
import { replaceRows } from './copy-rows.ts';
import { moveWhole } from './whole-file.ts';

/** SQLite's files beside a database. */
const BESIDE = ['-wal', '-shm'];

/** What a restore did. */
interface Restored {
  readonly contents: BackupContents;
  /** Where what was there before is now; null where nothing was, or a server has it. */
  readonly before: string | null;
}

/**
 * Puts a backup in the place of all that is kept. It is checked and brought up to date as a copy first; what is kept is
 * replaced in one step, and where anything fails before that, nothing has been changed.
 *
 * @throws BackupError, StartError
 */
export async function restoreBackup(database: DatabaseSettings, file: string): Promise<Restored> {
  await checkBackup(file);
  const isFile = database.kind === 'sqlite';
  if (isFile) prepareFiles(database.file);
  const lock = isFile ? await ProcessLock.take(database.file) : null;
  const folder = mkdtempSync(join(isFile ? dirname(database.file) : tmpdir(), 'restoring-'));
  try {
    const copy = join(folder, 'copy.sqlite');
    makePrivate(copy);
    copyFileSync(file, copy);
    await bringUpToDate(copy);
    const contents = await checkBackup(copy);
    if (isFile) return { contents, before: await replaceFile(copy, database.file) };
    await replaceServer(copy, database);
    return { contents, before: null };
  } finally {
    rmSync(folder, { recursive: true, force: true });
    await lock?.release();
  }
}

async function bringUpToDate(copy: string): Promise<void> {
  const dataSource = await new DataSource(driverOptions({ kind: 'sqlite', file: copy })).initialize();
  try {
    await migrate(dataSource);
    await dataSource.query('PRAGMA journal_mode = DELETE');
  } finally {
    await dataSource.destroy();
  }
}

/** Keeps the file that was there beside the new one. */
async function replaceFile(copy: string, file: string): Promise<string | null> {
  const before = `${file}.before-restore`;
  const wasThere = statSync(file).size > 0;
  // A log left by a process that died belongs to the old file, and would be read into the new one.
  await SqliteConnection.with(file, (old) => old.query('PRAGMA wal_checkpoint(TRUNCATE)')).catch(() => undefined);
  for (const suffix of BESIDE) {
    rmSync(`${before}${suffix}`, { force: true });
    if (existsSync(`${file}${suffix}`)) renameSync(`${file}${suffix}`, `${before}${suffix}`);
  }
  if (wasThere) copyFileSync(file, before);
  moveWhole(copy, file);
  return wasThere ? before : null;
}

async function replaceServer(copy: string, database: DatabaseSettings): Promise<void> {
  const target = await openDatabase(database);
  try {
    const source = await new DataSource(driverOptions({ kind: 'sqlite', file: copy })).initialize();
    try {
      await target.transaction(async (manager) => {
        await manager.query('SET LOCAL statement_timeout = 0');
        await replaceRows(source.manager, manager);
      });
    } finally {
      await source.destroy();
    }
  } finally {
    await target.destroy();
  }
}
