import { AsyncLocalStorage } from 'node:async_hooks';
import { Injectable, type OnModuleDestroy } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { Conflict, isConflict } from './conflict.ts';
import { DatabaseFile } from './database-file.ts';
import { embeddedTransaction } from './embedded-transaction.ts';
import { Outage, outageReasonOf, type OutageReason } from './outage.ts';
import { probeFile, probeServer } from './probe.ts';
import { WriteAheadLog } from './write-ahead-log.ts';
import { WriteQueue } from './write-queue.ts';

type Work<T> = (manager: EntityManager) => Promise<T>;

/** What an embedded database has and a server has not. */
interface Embedded {
  readonly queue: WriteQueue;
  readonly file: DatabaseFile;
  readonly log: WriteAheadLog;
}

/** After a lock was waited for in vain, what waits in the queue is refused at once for so long: else it would add up. */
const LOCKED_FOR_MS = 1_000;
/** Failures of a commit to an embedded database after which it is certain that nothing was written. */
const NOT_WRITTEN: readonly OutageReason[] = ['locked', 'full', 'read-only', 'moved'];

/**
 * The only way to the database. On SQLite every unit waits for the one before it, reads too, since on its one connection a read
 * would see half-written work; PostgreSQL has a pool and needs no queue.
 *
 * Units do not nest: what must be written together is one `write`, and repositories take its manager. What goes wrong in the
 * database comes out as `Outage` or `Conflict`.
 */
@Injectable()
export class UnitOfWork implements OnModuleDestroy {
  private readonly embedded: Embedded | null;
  private readonly inside = new AsyncLocalStorage<{ open: boolean }>();
  private open = 0;
  private lockedUntil = 0;

  constructor(private readonly dataSource: DataSource) {
    const { options } = dataSource;
    this.embedded =
      options.type !== 'sqlite'
        ? null
        : {
            queue: new WriteQueue(),
            file: new DatabaseFile(options.database),
            log: new WriteAheadLog(dataSource, (work) => this.enter(work)),
          };
  }

  /** All of it is written, or nothing. */
  write<T>(work: Work<T>): Promise<T> {
    return this.enter(() => this.commit(work));
  }

  /** Sees only what is committed. */
  read<T>(work: Work<T>): Promise<T> {
    return this.enter(() => work(this.dataSource.manager));
  }

  /** Several reads that see the same moment. */
  snapshot<T>(work: Work<T>): Promise<T> {
    if (this.embedded !== null) return this.read(work);
    return this.enter(() => this.dataSource.transaction('REPEATABLE READ', work));
  }

  /**
   * A `write` that erases or overwrites: what was there leaves the files of an embedded database, at once or as soon as
   * nobody else reads it (`isErasurePending`). What a server keeps is its operator's.
   */
  async erase<T>(work: Work<T>): Promise<T> {
    const done = await this.write(work);
    await this.embedded?.log.empty();
    return done;
  }

  /** True while something erased may still stand in the log of an embedded database. */
  get isErasurePending(): boolean {
    return this.embedded?.log.isErasurePending ?? false;
  }

  /** Writes to the disk, and leaves everything as it was. @throws Outage where that cannot be done */
  async probe(): Promise<void> {
    await this.write((manager) => (this.embedded === null ? probeServer(manager) : probeFile(manager)));
  }

  onModuleDestroy(): void {
    this.embedded?.log.stop();
  }

  private async commit<T>(work: Work<T>): Promise<T> {
    let isCommitting = false;
    const noted: Work<T> = async (manager) => {
      const done = await work(manager);
      this.embedded?.file.mustBeThere();
      isCommitting = true;
      return done;
    };
    try {
      return await (this.embedded === null
        ? this.dataSource.transaction(noted)
        : embeddedTransaction(this.dataSource.manager, noted));
    } catch (error) {
      const reason = outageReasonOf(error);
      if (reason === null) throw error;
      const isUnwritten = !isCommitting || (this.embedded !== null && NOT_WRITTEN.includes(reason));
      throw new Outage(reason, isUnwritten ? 'no' : 'unknown', error);
    }
  }

  private enter<T>(work: () => Promise<T>): Promise<T> {
    if (this.inside.getStore()?.open) {
      throw new Error('A unit of work was started inside another; hand its manager on instead.');
    }
    const guarded = async (): Promise<T> => {
      this.mustBeUsable();
      const unit = { open: true };
      this.open++;
      try {
        return await this.inside.run(unit, work);
      } catch (error) {
        throw this.translated(error);
      } finally {
        unit.open = false;
        // While it is watched what runs inside of what, every promise of the process takes longer: not with no unit open.
        if (--this.open === 0) this.inside.disable();
      }
    };
    return this.embedded === null ? guarded() : this.embedded.queue.run(guarded);
  }

  private mustBeUsable(): void {
    this.embedded?.file.mustBeThere();
    if (performance.now() < this.lockedUntil) throw new Outage('locked', 'no');
  }

  private translated(error: unknown): unknown {
    if (isConflict(error)) return new Conflict(error);
    const reason = outageReasonOf(error);
    if (reason === null) return error;
    if (reason === 'locked' && this.embedded !== null) this.lockedUntil = performance.now() + LOCKED_FOR_MS;
    return error instanceof Outage ? error : new Outage(reason, 'no', error);
  }
}
