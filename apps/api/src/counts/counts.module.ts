import { Module } from '@nestjs/common';
import { TargetSheetsModule } from '../target-sheets/target-sheets.module.ts';
import { CountsController } from './counts.controller.ts';

@Module({ imports: [TargetSheetsModule], controllers: [CountsController] })
export class CountsModule {}
