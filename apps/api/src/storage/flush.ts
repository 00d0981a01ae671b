import { closeSync, fsyncSync, openSync } from 'node:fs';

/** Has a file written to the disk, so that it is there after a power cut. */
export function flush(path: string): void {
  const handle = openSync(path, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** The same for the names in a folder, where the system lets one open folders. */
export function flushNames(folder: string): void {
  if (process.platform !== 'win32') flush(folder);
}
