import type { DataSource } from 'typeorm';
import { BUSY_TIMEOUT_MS } from './embedded.ts';

/** How long one attempt waits for others who read the database. */
const PATIENCE_MS = 200;
/** How many attempts whoever erases waits for, and how long it is between attempts afterwards. */
const ATTEMPTS = 2;
const RETRY_MS = 1_000;

/** Runs something alone on the connection. */
type Alone = <T>(work: () => Promise<T>) => Promise<T>;

/**
 * The write-ahead log of an embedded database. What was deleted is overwritten in the database itself (`secure_delete`);
 * the log is where it would still stand.
 */
export class WriteAheadLog {
  /** True while something erased may still stand in it. */
  isErasurePending = false;
  private retry: NodeJS.Timeout | undefined;

  constructor(
    private readonly dataSource: DataSource,
    private readonly alone: Alone,
  ) {}

  /** Empties it now, or as soon as those who read the database let go of it. Does not throw: what was committed is. */
  async empty(attempts = ATTEMPTS): Promise<void> {
    this.isErasurePending = true;
    clearTimeout(this.retry);
    for (let attempt = 0; attempt < attempts; attempt++) {
      const emptied = await this.alone(() => truncateLog(this.dataSource)).catch(() => false);
      if (emptied) {
        this.isErasurePending = false;
        return;
      }
    }
    clearTimeout(this.retry);
    this.retry = setTimeout(() => void this.empty(1), RETRY_MS).unref();
  }

  stop(): void {
    clearTimeout(this.retry);
  }
}

/**
 * Copies the log into the database and cuts it to nothing.
 *
 * @returns false where it could not be done: somebody else reads the database, or the disk is full
 */
async function truncateLog(dataSource: DataSource): Promise<boolean> {
  try {
    await dataSource.query(`PRAGMA busy_timeout = ${PATIENCE_MS}`);
    const [row] = await dataSource.query<{ busy: number }[]>('PRAGMA wal_checkpoint(TRUNCATE)');
    return row?.busy === 0;
  } finally {
    await dataSource.query(`PRAGMA busy_timeout = ${BUSY_TIMEOUT_MS}`);
  }
}
