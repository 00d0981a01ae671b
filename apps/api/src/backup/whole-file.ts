import { existsSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { flush, flushNames } from '../storage/flush.ts';
import { makePrivate } from '../storage/private-file.ts';
import { BackupError } from './backup-error.ts';

/**
 * Has a file written under another name and put in its place when it is whole and on the disk; its owner's alone.
 *
 * @throws BackupError where there is a file of that name
 */
export async function writeWhole(file: string, write: (part: string) => Promise<void>): Promise<void> {
  if (existsSync(file)) throw new BackupError(`${file} is there already. Name a file that is not.`);
  const part = `${file}.part`;
  rmSync(part, { force: true });
  try {
    makePrivate(part);
    await write(part);
    moveWhole(part, file);
  } finally {
    for (const left of ['', '-wal', '-shm', '-journal', '.lock']) rmSync(`${part}${left}`, { force: true });
  }
}

/** Moves a file in place of another, so that after a power cut it is one or the other. */
export function moveWhole(from: string, to: string): void {
  flush(from);
  renameSync(from, to);
  flushNames(dirname(to));
}
