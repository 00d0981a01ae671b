import { Global, Module, type DynamicModule } from '@nestjs/common';
import type { Settings } from '../settings/settings.ts';
import { DailyCopies } from './daily-copies.ts';

/** The copies that the service makes of its database by itself. */
@Global()
@Module({})
export class BackupModule {
  static with({ database, backupsKept }: Settings): DynamicModule {
    return {
      module: BackupModule,
      providers: [{ provide: DailyCopies, useFactory: () => new DailyCopies(database, backupsKept) }],
      exports: [DailyCopies],
    };
  }
}
