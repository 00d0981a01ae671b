import { chmodSync, closeSync, constants, openSync, statSync } from 'node:fs';
import { StartError } from '../settings/start-error.ts';

const OTHERS = 0o077;

/** Makes a file that only its owner may read and write where there is none, and sees that one that is there is so. @throws StartError */
export function makePrivate(file: string): void {
  try {
    closeSync(openSync(file, constants.O_RDWR | constants.O_CREAT, 0o600));
  } catch (error) {
    throw new StartError(
      `${file} cannot be written (${String((error as NodeJS.ErrnoException).code)}). Make it yours to write, or name another with SQLITE_FILE or DATA_DIR.`,
    );
  }
  mustBePrivate(file);
}

/** Closes a file to others where it is there and open to them. @throws StartError where that cannot be done */
export function mustBePrivate(file: string): void {
  if (process.platform === 'win32' || !isOpenToOthers(file)) return;
  try {
    chmodSync(file, 0o600);
  } catch {
    // Not ours to close; the check below says so.
  }
  if (isOpenToOthers(file)) {
    throw new StartError(`${file} can be read by others; make it yours alone: chmod 600 ${file}`);
  }
}

function isOpenToOthers(file: string): boolean {
  const stat = statSync(file, { throwIfNoEntry: false });
  return stat !== undefined && (stat.mode & OTHERS) !== 0;
}
