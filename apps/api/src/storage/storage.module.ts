import { Global, Module, type DynamicModule, type OnApplicationShutdown } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { UnitOfWork } from './unit-of-work.ts';

/** The opened database for every module, closed with the application. */
@Global()
@Module({})
export class StorageModule implements OnApplicationShutdown {
  constructor(private readonly dataSource: DataSource) {}

  static over(dataSource: DataSource): DynamicModule {
    return {
      module: StorageModule,
      providers: [{ provide: DataSource, useValue: dataSource }, UnitOfWork],
      exports: [DataSource, UnitOfWork],
    };
  }

  async onApplicationShutdown(): Promise<void> {
    if (this.dataSource.isInitialized) await this.dataSource.destroy();
  }
}
