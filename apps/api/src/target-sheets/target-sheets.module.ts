import { Module } from '@nestjs/common';
import { RecordsModule } from '../records/records.module.ts';
import { bodyModelProvider } from '../body-model/body-model.provider.ts';
import { ComputeController } from './compute.controller.ts';
import { SheetComposer } from './sheet-composer.ts';
import { TargetSheetRepository } from './target-sheet.repository.ts';
import { TargetSheetsController } from './target-sheets.controller.ts';
import { TargetSheets } from './target-sheets.ts';

@Module({
  imports: [RecordsModule],
  controllers: [ComputeController, TargetSheetsController],
  providers: [TargetSheets, TargetSheetRepository, SheetComposer, bodyModelProvider],
  exports: [TargetSheets, TargetSheetRepository, SheetComposer],
})
export class TargetSheetsModule {}
