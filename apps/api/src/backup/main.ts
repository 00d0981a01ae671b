import { resolve } from 'node:path';
import { databaseFrom } from '../settings/settings.ts';
import { StartError } from '../settings/start-error.ts';
import { BackupError } from './backup-error.ts';
import type { BackupContents } from './check-backup.ts';
import { makeBackup } from './make-backup.ts';
import { restoreBackup } from './restore-backup.ts';

const KEY_NOTE =
  'The key that seals planners’ signing secrets (hand-off.key beside the data, or HANDOFF_KEY) is not in it; keep that apart.';

const inWords = (contents: BackupContents): string =>
  Object.entries(contents)
    .filter(([table]) => table !== 'maker')
    .map(([table, rows]) => `${rows} ${table.replaceAll('_', ' ')}`)
    .join(', ');

async function run(what: string | undefined, name: string | undefined): Promise<string> {
  if ((what !== 'backup' && what !== 'restore') || name === undefined) {
    throw new BackupError('Name a file: npm run backup -- FILE, npm run restore -- FILE');
  }
  const file = resolve(name);
  const database = databaseFrom(process.env);
  if (what === 'backup') return `${file}: ${inWords(await makeBackup(database, file))}. ${KEY_NOTE}`;
  const { contents, before } = await restoreBackup(database, file);
  const kept = before === null ? '' : ` What was there before is in ${before}.`;
  return `Restored from ${file}: ${inWords(contents)}.${kept}`;
}

try {
  console.log(await run(process.argv[2], process.argv[3]));
} catch (error) {
  if (error instanceof BackupError || error instanceof StartError) console.error(error.message);
  else console.error(`It failed: ${error instanceof Error ? error.message : String(error)}`);
  process.exit(1);
}
