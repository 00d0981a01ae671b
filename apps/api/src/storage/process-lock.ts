import { createRequire } from 'node:module';
import type { Database } from 'sqlite3';
import { StartError } from '../settings/start-error.ts';
import { makePrivate } from './private-file.ts';

type Sqlite3 = typeof import('sqlite3');

/**
 * Keeps an embedded database to one process: a lock of the operating system on a file beside it, held by an empty database
 * of SQLite's, which has such locks on every system. It ends with the process, however that ends.
 */
export class ProcessLock {
  private constructor(private readonly holder: Database) {}

  /** @throws StartError where another process has it */
  static async take(file: string): Promise<ProcessLock> {
    const lockFile = `${file}.lock`;
    makePrivate(lockFile);
    const { Database } = createRequire(import.meta.url)('sqlite3') as Sqlite3;
    const holder = await new Promise<Database>((resolve, reject) => {
      const opened: Database = new Database(lockFile, (error) => (error ? reject(error) : resolve(opened)));
    });
    try {
      await run(holder, 'PRAGMA journal_mode = MEMORY');
      await run(holder, 'BEGIN EXCLUSIVE');
      return new ProcessLock(holder);
    } catch (error) {
      await close(holder);
      if ((error as NodeJS.ErrnoException).code !== 'SQLITE_BUSY') throw error;
      throw new StartError(`The database ${file} is in use by another Easewright. Stop that one first.`);
    }
  }

  release(): Promise<void> {
    return close(this.holder);
  }
}

function run(database: Database, sql: string): Promise<void> {
  return new Promise((resolve, reject) => database.run(sql, (error) => (error ? reject(error) : resolve())));
}

function close(database: Database): Promise<void> {
  return new Promise((resolve, reject) => database.close((error) => (error ? reject(error) : resolve())));
}
