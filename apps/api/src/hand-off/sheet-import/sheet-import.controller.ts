import { Body, Controller, Post, Res } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiTags, getSchemaPath } from '@nestjs/swagger';
import type { Response } from 'express';
import { ApiProblems, BODY_PROBLEMS } from '../../http/api-problems.ts';
import { Idempotent, IdempotentRequest } from '../../idempotency/idempotent-request.ts';
import { TakesIdempotencyKey } from '../../idempotency/takes-idempotency-key.ts';
import { MakerId } from '../../maker/maker-id.ts';
import { ApiSheet, SHEET_SCHEMA } from '../../target-sheets/api-sheet.ts';
import { AcceptedFormat, sendKeptSheet, type SheetFormat } from '../../target-sheets/sheet-format.ts';
import { SheetImport } from './sheet-import.ts';

const HEADERS = { ETag: 'Of this sheet in this form; it never changes.', Location: 'Where it is kept.' };

/** Sheets that come back. */
@ApiTags('target-sheets')
@Controller('v1/target-sheets')
export class SheetImportController {
  constructor(private readonly sheets: SheetImport) {}

  @Post('import')
  @TakesIdempotencyKey()
  @ApiOperation({
    summary: 'Read a target sheet in and keep it, with its id',
    description:
      'As it is, fields of a newer minor version included; one of a newer major version is refused. Up to 512 kB.',
  })
  @ApiBody({ schema: { $ref: getSchemaPath(SHEET_SCHEMA) } })
  @ApiSheet(201, 'Kept.', HEADERS)
  @ApiSheet(200, 'It was kept before.', HEADERS)
  @ApiProblems(...BODY_PROBLEMS, 409)
  async readIn(
    @MakerId() maker: string,
    @Body() json: unknown,
    @AcceptedFormat() format: SheetFormat,
    @Idempotent() request: IdempotentRequest,
    @Res() response: Response,
  ): Promise<void> {
    const { row, known } = await this.sheets.readIn(maker, json, request);
    response.status(known ? 200 : 201).location(`/v1/target-sheets/${row.id}`);
    sendKeptSheet(response, format, row.sheet);
  }
}
