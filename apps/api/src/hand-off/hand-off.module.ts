import { Module, type DynamicModule } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { TargetSheetsModule } from '../target-sheets/target-sheets.module.ts';
import { HandOffSender } from './delivery/hand-off-sender.ts';
import { OutboxQueue } from './delivery/outbox-queue.ts';
import { OutboxWorker } from './delivery/outbox-worker.ts';
import { PlannerPost } from './delivery/post.ts';
import { HandOffSettings } from './hand-off-settings.ts';
import { HandOffIntake } from './outbox/hand-off-intake.ts';
import { HandOffs } from './outbox/hand-offs.ts';
import { HandOffsController } from './outbox/hand-offs.controller.ts';
import { Outbox } from './outbox/outbox.ts';
import { PlannerSecrets } from './planners/planner-secrets.ts';
import { PlannerTest } from './planners/planner-test.ts';
import { PlannersController } from './planners/planners.controller.ts';
import { Planners } from './planners/planners.ts';
import { ReadKeyGuard } from './read-keys/read-key.guard.ts';
import { ReadKeysController } from './read-keys/read-keys.controller.ts';
import { ReadKeys } from './read-keys/read-keys.ts';
import { SheetImport } from './sheet-import/sheet-import.ts';
import { SheetImportController } from './sheet-import/sheet-import.controller.ts';

/** Handing sheets on: planners, the outbox and those who empty it, the keys to read with. */
@Module({})
export class HandOffModule {
  static with(settings: HandOffSettings): DynamicModule {
    return {
      module: HandOffModule,
      imports: [TargetSheetsModule],
      controllers: [PlannersController, HandOffsController, ReadKeysController, SheetImportController],
      providers: [
        { provide: HandOffSettings, useValue: settings },
        { provide: PlannerPost, useFactory: () => new PlannerPost(settings.addresses) },
        { provide: APP_GUARD, useClass: ReadKeyGuard },
        Planners,
        PlannerSecrets,
        PlannerTest,
        HandOffs,
        HandOffIntake,
        Outbox,
        OutboxQueue,
        OutboxWorker,
        HandOffSender,
        ReadKeys,
        SheetImport,
      ],
    };
  }
}
