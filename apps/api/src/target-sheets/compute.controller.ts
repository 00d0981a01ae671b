import { Body, Controller, HttpCode, Post, Res } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiProperty, ApiTags, getSchemaPath } from '@nestjs/swagger';
import type { Response } from 'express';
import type { TargetSheet } from '#target-sheet';
import { ApiProblems, BODY_PROBLEMS } from '../http/api-problems.ts';
import { ApiSheet, SHEET_SCHEMA } from './api-sheet.ts';
import { RunSheetsDto } from './keep-sheet.dto.ts';
import { SheetComposer } from './sheet-composer.ts';
import { AcceptedFormat, sendSheet, type SheetFormat } from './sheet-format.ts';
import { ComputeSheetDto } from './sheet-request.dto.ts';
import { sheetChoices, sheetRequest } from './sheet-request.ts';

class SizedSheetDto {
  @ApiProperty({ type: 'string', example: 'M' })
  size!: string;
  @ApiProperty({ allOf: [{ $ref: getSchemaPath(SHEET_SCHEMA) }] })
  sheet!: TargetSheet;
}

class SheetRunDto {
  @ApiProperty({
    type: () => SizedSheetDto,
    isArray: true,
    description: 'In the order of the table, or of the sizes named.',
  })
  items!: SizedSheetDto[];
}

/** Sheets that are computed and not kept. */
@ApiTags('target-sheets')
@Controller('v1/target-sheets')
export class ComputeController {
  constructor(private readonly composer: SheetComposer) {}

  @Post('compute')
  @HttpCode(200)
  @ApiOperation({
    summary: 'Make a target sheet of what is sent along; nothing is stored',
    description:
      'A body alone is enough. What is not known makes ranges wider, and the sheet says which measure would help most.',
  })
  @ApiSheet(200, 'The sheet, in the form accepted.')
  @ApiProblems(...BODY_PROBLEMS)
  compute(@Body() dto: ComputeSheetDto, @AcceptedFormat() format: SheetFormat, @Res() response: Response): void {
    sendSheet(response, format, this.composer.compose(sheetRequest(dto)));
  }

  @Post('run')
  @HttpCode(200)
  @ApiOperation({
    summary: 'Make a sheet for each size of a published table; nothing is stored',
    description: 'One design over a table of /v1/sizes, or over some of its sizes.',
  })
  @ApiOkResponse({ description: 'One sheet a size.', type: SheetRunDto })
  @ApiProblems(...BODY_PROBLEMS)
  run(@Body() dto: RunSheetsDto) {
    const choices = { ...sheetChoices(dto, []), fabric: dto.fabric };
    return { items: this.composer.run(choices, dto.table, dto.sizes ?? null) };
  }
}
