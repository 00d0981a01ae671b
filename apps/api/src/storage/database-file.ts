import { statSync } from 'node:fs';
import { Outage } from './outage.ts';

/**
 * The file of an embedded database, as it was when it was opened. SQLite goes on writing into a file that has been deleted
 * or replaced, and all of that would be lost.
 */
export class DatabaseFile {
  private readonly opened: string | null;

  constructor(private readonly file: string) {
    this.opened = file === ':memory:' ? null : identityOf(file);
  }

  /** @throws Outage `moved` where the file is not the one that was opened */
  mustBeThere(): void {
    if (this.opened !== null && identityOf(this.file) !== this.opened) throw new Outage('moved', 'no');
  }
}

function identityOf(file: string): string {
  const stat = statSync(file, { throwIfNoEntry: false });
  return stat === undefined ? '' : `${stat.dev}:${stat.ino}`;
}
