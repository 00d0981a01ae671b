import { accessSync, constants, mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import type { DataSource } from 'typeorm';
import { StartError } from '../settings/start-error.ts';
import { makePrivate } from './private-file.ts';

/** How long SQLite waits for a lock that another process holds. */
export const BUSY_TIMEOUT_MS = 5000;

/** What must hold on the embedded database; read back after it is set. `secure_delete` overwrites what is deleted. */
const PRAGMAS = {
  journal_mode: 'wal',
  synchronous: 2,
  foreign_keys: 1,
  secure_delete: 1,
  busy_timeout: BUSY_TIMEOUT_MS,
} as const;

/** Makes the data folder and the file (for their owner alone) and sees that they can be written. @throws StartError */
export function prepareFiles(file: string): void {
  const folder = dirname(file);
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
  } catch (error) {
    throw new StartError(
      `The data folder ${folder} cannot be written (${String((error as NodeJS.ErrnoException).code)}). Make it writable or name another with DATA_DIR.`,
    );
  }
  makePrivate(file);
}

/** Sets the pragmas and asserts each by reading it back. A database in memory has no write-ahead log. @throws StartError */
export async function applyPragmas(dataSource: DataSource): Promise<void> {
  for (const [name, wanted] of Object.entries(PRAGMAS)) {
    if (name === 'journal_mode' && dataSource.options.database === ':memory:') continue;
    await dataSource.query(`PRAGMA ${name} = ${wanted}`);
    const [row] = await dataSource.query<Record<string, unknown>[]>(`PRAGMA ${name}`);
    const read = Object.values(row ?? {})[0];
    if (read !== wanted) {
      throw new StartError(
        `SQLite does not keep ${name} = ${wanted} (it says ${String(read)}); the file system may not allow it.`,
      );
    }
  }
}
