import { StartError } from '../settings/start-error.ts';
import { makePrivate } from './private-file.ts';
import { SqliteConnection } from './sqlite-connection.ts';

/**
 * Keeps an embedded database to one process: a lock of the operating system on a file beside it, held by an empty database
 * of SQLite's, which has such locks on every system. It ends with the process, however that ends.
 */
export class ProcessLock {
  private constructor(private readonly holder: SqliteConnection) {}

  /** @throws StartError where another process has it */
  static async take(file: string): Promise<ProcessLock> {
    const lockFile = `${file}.lock`;
    makePrivate(lockFile);
    const holder = await SqliteConnection.open(lockFile);
    try {
      await holder.query('PRAGMA journal_mode = MEMORY');
      await holder.query('BEGIN EXCLUSIVE');
      return new ProcessLock(holder);
    } catch (error) {
      await holder.close();
      if ((error as NodeJS.ErrnoException).code !== 'SQLITE_BUSY') throw error;
      throw new StartError(`The database ${file} is in use by another Easewright. Stop that one first.`);
    }
  }

  release(): Promise<void> {
    return this.holder.close();
  }
}
