import { AsyncLocalStorage } from 'node:async_hooks';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { emptyLog } from './embedded.ts';
import { WriteQueue } from './write-queue.ts';

type Work<T> = (manager: EntityManager) => Promise<T>;

/**
 * The only way to the database. On SQLite every unit waits for the one before it, reads too, since on its one connection a read
 * would see half-written work; PostgreSQL has a pool and needs no queue.
 *
 * Units do not nest: what must be written together is one `write`, and repositories take its manager.
 */
@Injectable()
export class UnitOfWork {
  private readonly queue: WriteQueue | null;
  private readonly inside = new AsyncLocalStorage<{ open: boolean }>();
  private open = 0;

  constructor(private readonly dataSource: DataSource) {
    this.queue = dataSource.options.type === 'sqlite' ? new WriteQueue() : null;
  }

  /** All of it is written, or nothing. */
  write<T>(work: Work<T>): Promise<T> {
    return this.enter(() => this.dataSource.transaction(work));
  }

  /** Sees only what is committed. */
  read<T>(work: Work<T>): Promise<T> {
    return this.enter(() => work(this.dataSource.manager));
  }

  /** A `write` that erases: leaves no trace in the files of an embedded database. A server's own clean-up is its operator's. */
  async erase<T>(work: Work<T>): Promise<T> {
    const done = await this.write(work);
    if (this.queue !== null) await this.enter(() => emptyLog(this.dataSource));
    return done;
  }

  private enter<T>(work: () => Promise<T>): Promise<T> {
    if (this.inside.getStore()?.open) {
      throw new Error('A unit of work was started inside another; hand its manager on instead.');
    }
    const guarded = async (): Promise<T> => {
      const unit = { open: true };
      this.open++;
      try {
        return await this.inside.run(unit, work);
      } finally {
        unit.open = false;
        // While it is watched what runs inside of what, every promise of the process takes longer: not with no unit open.
        if (--this.open === 0) this.inside.disable();
      }
    };
    return this.queue === null ? guarded() : this.queue.run(guarded);
  }
}
