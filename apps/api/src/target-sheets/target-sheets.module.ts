import { Module } from '@nestjs/common';
import { RecordsModule } from '../records/records.module.ts';
import { BodyModelModule } from '../body-model/body-model.module.ts';
import { ComputeController } from './compute.controller.ts';
import { LearnedController } from './learned.controller.ts';
import { Learned } from './learned.ts';
import { SheetComposer } from './sheet-composer.ts';
import { TargetSheetRepository } from './target-sheet.repository.ts';
import { TargetSheetsController } from './target-sheets.controller.ts';
import { TargetSheets } from './target-sheets.ts';

@Module({
  imports: [BodyModelModule, RecordsModule],
  controllers: [ComputeController, TargetSheetsController, LearnedController],
  providers: [Learned, TargetSheets, TargetSheetRepository, SheetComposer],
  exports: [TargetSheets, TargetSheetRepository, SheetComposer],
})
export class TargetSheetsModule {}
