import { statSync } from 'node:fs';
import { MIGRATIONS } from '../storage/migrations/index.ts';
import { SqliteConnection } from '../storage/sqlite-connection.ts';
import { BackupError } from './backup-error.ts';

/** What a backup holds: rows by table. */
export type BackupContents = Readonly<Record<string, number>>;

const TABLES = `SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name <> 'migrations'`;

/** Opens a backup and reads all of it. @throws BackupError where it is damaged, is none, or was made by a newer program */
export async function checkBackup(file: string): Promise<BackupContents> {
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true) throw new BackupError(`There is no file ${file}.`);
  return SqliteConnection.with(file, async (backup) => {
    const [checked] = await backup.query<Record<string, string>>('PRAGMA integrity_check');
    const broken = await backup.query('PRAGMA foreign_key_check');
    if (Object.values(checked ?? {})[0] !== 'ok' || broken.length > 0) throw damaged(file);
    const known = new Set(MIGRATIONS.map(({ name }) => name));
    const ran = await backup.query<{ name: string }>('SELECT name FROM migrations ORDER BY id');
    const unknown = ran.filter(({ name }) => !known.has(name));
    if (unknown.length > 0) {
      throw new BackupError(`${file} was made by a newer Easewright (${unknown[0]?.name}). Restore it with that one.`);
    }
    const contents: Record<string, number> = {};
    for (const { name } of await backup.query<{ name: string }>(TABLES)) {
      const [row] = await backup.query<{ rows: number }>(`SELECT count(*) AS rows FROM "${name}"`);
      contents[name] = row?.rows ?? 0;
    }
    return contents;
  }).catch((error: unknown) => {
    throw error instanceof BackupError ? error : damaged(file);
  });
}

const damaged = (file: string): BackupError =>
  new BackupError(`${file} is no backup of Easewright's, or it is damaged. Nothing was changed.`);
