import { Logger, type BeforeApplicationShutdown, type OnApplicationBootstrap } from '@nestjs/common';
import { mkdirSync, readdirSync, rmSync, existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { errorPlace } from '../log/error-place.ts';
import type { DatabaseSettings } from '../settings/settings.ts';
import { makeBackup } from './make-backup.ts';

const LOOK_MS = 3_600_000;
const COPY = /^easewright-\d{4}-\d{2}-\d{2}\.sqlite$/;

/**
 * A copy of an embedded database for each day on which the service runs, in the folder `backups` beside it, the newest few
 * kept. Each is opened and checked when it is made. While nothing is kept none is made.
 */
export class DailyCopies implements OnApplicationBootstrap, BeforeApplicationShutdown {
  private readonly logger = new Logger('DailyCopies');
  private readonly folder: string | null;
  private timer: NodeJS.Timeout | undefined;
  private running: Promise<void> = Promise.resolve();

  /** @param kept how many; 0 for none */
  constructor(
    private readonly database: DatabaseSettings,
    private readonly kept: number,
  ) {
    const isFile = database.kind === 'sqlite' && database.file !== ':memory:';
    this.folder = isFile ? join(dirname(database.file), 'backups') : null;
  }

  onApplicationBootstrap(): void {
    if (this.folder === null || this.kept === 0) return;
    const look = (): void => void (this.running = this.copyIfDue(new Date()));
    look();
    this.timer = setInterval(look, LOOK_MS).unref();
  }

  async beforeApplicationShutdown(): Promise<void> {
    clearInterval(this.timer);
    await this.running;
  }

  /** Makes the day's copy where there is none yet, and removes those that are too many. Does not throw. */
  async copyIfDue(now: Date): Promise<void> {
    if (this.folder === null) return;
    try {
      mkdirSync(this.folder, { recursive: true, mode: 0o700 });
      const file = join(this.folder, `easewright-${now.toISOString().slice(0, 10)}.sqlite`);
      if (!existsSync(file)) await this.copy(file);
      for (const old of this.copies().slice(this.kept)) rmSync(old);
    } catch (error) {
      this.logger.error(`The day's copy could not be made: ${errorPlace(error)}`);
    }
  }

  /** Removes every copy. Erasing all that is kept erases these first. */
  async removeAll(): Promise<void> {
    await this.running;
    for (const copy of this.copies()) rmSync(copy);
  }

  private async copy(file: string): Promise<void> {
    const { maker: _maker, ...contents } = await makeBackup(this.database, file);
    if (Object.values(contents).every((rows) => rows === 0)) rmSync(file);
  }

  /** The newest first. */
  private copies(): string[] {
    const { folder } = this;
    if (folder === null || !existsSync(folder)) return [];
    const names = readdirSync(folder).filter((name) => COPY.test(name));
    return names
      .sort()
      .reverse()
      .map((name) => join(folder, name));
  }
}
