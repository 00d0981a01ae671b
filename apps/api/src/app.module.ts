import { Module, type DynamicModule } from '@nestjs/common';
import { APP_FILTER, APP_GUARD, APP_INTERCEPTOR, APP_PIPE } from '@nestjs/core';
import type { DataSource } from 'typeorm';
import { BackupModule } from './backup/backup.module.ts';
import { EverythingModule } from './everything/everything.module.ts';
import type { HandOffSettings } from './hand-off/hand-off-settings.ts';
import { HandOffModule } from './hand-off/hand-off.module.ts';
import { HealthController } from './health/health.controller.ts';
import { EtagInterceptor } from './http/etag.interceptor.ts';
import { InputPipe } from './http/input.pipe.ts';
import { LinkInterceptor } from './http/link.interceptor.ts';
import { ProblemFilter } from './http/problem.filter.ts';
import { UnexpectedInputGuard } from './http/unexpected-input.guard.ts';
import { IdempotencyModule } from './idempotency/idempotency.module.ts';
import { RecordsModule } from './records/records.module.ts';
import { ReferenceModule } from './reference/reference.module.ts';
import type { Settings } from './settings/settings.ts';
import { CountsModule } from './counts/counts.module.ts';
import { TargetSheetsModule } from './target-sheets/target-sheets.module.ts';
import { StorageModule } from './storage/storage.module.ts';

/** The whole API over an opened database. */
@Module({})
export class AppModule {
  static over(dataSource: DataSource, settings: Settings, handOff: HandOffSettings): DynamicModule {
    return {
      module: AppModule,
      imports: [
        StorageModule.over(dataSource),
        BackupModule.with(settings),
        IdempotencyModule.with(handOff.key),
        // First, since a router tries one address after the other: they have the most to do.
        TargetSheetsModule,
        CountsModule,
        RecordsModule,
        EverythingModule,
        ReferenceModule,
        HandOffModule.with(handOff),
      ],
      controllers: [HealthController],
      providers: [
        { provide: APP_GUARD, useClass: UnexpectedInputGuard },
        { provide: APP_INTERCEPTOR, useClass: EtagInterceptor },
        { provide: APP_INTERCEPTOR, useClass: LinkInterceptor },
        { provide: APP_PIPE, useClass: InputPipe },
        { provide: APP_FILTER, useClass: ProblemFilter },
      ],
    };
  }
}
