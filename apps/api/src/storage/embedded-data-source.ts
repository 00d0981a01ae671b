import { DataSource, type DataSourceOptions } from 'typeorm';
import { ProcessLock } from './process-lock.ts';

/** An embedded database, this process's alone from when it is opened until it is closed. */
export class EmbeddedDataSource extends DataSource {
  private lock: ProcessLock | null = null;

  /** @param file the database's, locked; null for one in memory */
  constructor(
    options: DataSourceOptions,
    private readonly file: string | null,
  ) {
    super(options);
  }

  override async initialize(): Promise<this> {
    if (this.file !== null) this.lock = await ProcessLock.take(this.file);
    try {
      return await super.initialize();
    } catch (error) {
      await this.release();
      throw error;
    }
  }

  override async destroy(): Promise<void> {
    await super.destroy();
    await this.release();
  }

  private async release(): Promise<void> {
    await this.lock?.release();
    this.lock = null;
  }
}
