import { randomBytes } from 'node:crypto';
import { linkSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { StartError } from '../../settings/start-error.ts';
import { flush, flushNames } from '../../storage/flush.ts';
import { KEY_BYTES } from './secret-box.ts';

const OTHERS = 0o077;

/** Reads the key from its text: the base64 of 32 bytes, as `openssl rand -base64 32` prints it. @throws StartError */
export function handOffKey(text: string, where: string): Buffer {
  const key = Buffer.from(text.trim(), 'base64');
  if (key.length === KEY_BYTES) return key;
  throw new StartError(`${where} must be 32 bytes in base64 (openssl rand -base64 32); it holds ${key.length}.`);
}

/**
 * The key beside the data, made at the first start and readable by its owner alone. Of several processes that start
 * together one makes it and all read the same.
 *
 * @throws StartError when others may read it, or it cannot be read or made
 */
export function keyFromFile(file: string): Buffer {
  try {
    makeOnce(file);
    if (process.platform !== 'win32' && (statSync(file).mode & OTHERS) !== 0) {
      throw new StartError(`The key ${file} can be read by others; make it yours alone: chmod 600 ${file}`);
    }
    return handOffKey(readFileSync(file, 'utf8'), `The key ${file}`);
  } catch (error) {
    if (error instanceof StartError) throw error;
    const { code } = error as NodeJS.ErrnoException;
    throw new StartError(
      `The key ${file} cannot be read or made (${code}). Make its folder writable, or give HANDOFF_KEY.`,
    );
  }
}

/** Written aside, to the disk, and linked into its place, so that nobody reads half of it and nobody overwrites it. */
function makeOnce(file: string): void {
  if (statSync(file, { throwIfNoEntry: false })) return;
  const aside = `${file}.${randomBytes(6).toString('hex')}`;
  makeFolder(dirname(file));
  writeFileSync(aside, `${randomBytes(KEY_BYTES).toString('base64')}\n`, { mode: 0o600, flag: 'wx' });
  flush(aside);
  try {
    linkSync(aside, file);
    flushNames(dirname(file));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  } finally {
    rmSync(aside);
  }
}

/** Where it cannot be made, writing into it says why in the same words on every version of Node. */
function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  } catch {
    // See above.
  }
}
