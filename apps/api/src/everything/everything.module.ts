import { Module } from '@nestjs/common';
import { RecordsModule } from '../records/records.module.ts';
import { TargetSheetsModule } from '../target-sheets/target-sheets.module.ts';
import { EverythingController } from './everything.controller.ts';
import { ExportImport } from './export-import.ts';
import { Everything } from './everything.ts';

@Module({
  imports: [RecordsModule, TargetSheetsModule],
  controllers: [EverythingController],
  providers: [Everything, ExportImport],
})
export class EverythingModule {}
