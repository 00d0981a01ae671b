import { Body, Controller, Delete, Get, HttpCode, Post, Query, Res } from '@nestjs/common';
import { ApiNoContentResponse, ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { OpenToReadKeys } from '../hand-off/read-keys/open-to-read-keys.ts';
import { ApiProblems, BODY_PROBLEMS } from '../http/api-problems.ts';
import { Id } from '../http/id.ts';
import { PageQuery } from '../http/page.ts';
import { ReportsErasure } from '../storage/reports-erasure.ts';
import { Idempotent, IdempotentRequest } from '../idempotency/idempotent-request.ts';
import { TakesIdempotencyKey } from '../idempotency/takes-idempotency-key.ts';
import { MakerId } from '../maker/maker-id.ts';
import { ApiSheet } from './api-sheet.ts';
import { inputIds, KeepSheetDto } from './keep-sheet.dto.ts';
import {
  InputsChangedDto,
  inputsChangedOf,
  sheetEntry,
  SheetInputsDto,
  sheetInputs,
  SheetPage,
} from './kept-sheet.dto.ts';
import { AcceptedFormat, sendKeptSheet, type SheetFormat } from './sheet-format.ts';
import { sheetChoices } from './sheet-request.ts';
import { SheetUnitQuery } from './sheet-unit.query.ts';
import { TargetSheets } from './target-sheets.ts';

const ID = ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' } });
const ETAG = 'Of this sheet in this form; it never changes.';

/** Sheets that are kept. */
@ApiTags('target-sheets')
@Controller('v1/target-sheets')
export class TargetSheetsController {
  constructor(private readonly sheets: TargetSheets) {}

  @Post()
  @TakesIdempotencyKey()
  @ApiOperation({
    summary: 'Make a target sheet from a kept body, garment and fabric, and keep it',
    description: 'It holds what it was made from, and never changes.',
  })
  @ApiSheet(201, 'The sheet, kept, in the form accepted.', { ETag: ETAG, Location: 'Where it is kept.' })
  @ApiProblems(...BODY_PROBLEMS)
  async keep(
    @MakerId() maker: string,
    @Body() dto: KeepSheetDto,
    @AcceptedFormat() format: SheetFormat,
    @Idempotent() request: IdempotentRequest,
    @Res() response: Response,
  ): Promise<void> {
    const ids = inputIds(dto);
    const row = await this.sheets.keep(maker, ids, sheetChoices(dto, dto.made ?? []), request);
    response.status(201).location(`/v1/target-sheets/${row.id}`);
    sendKeptSheet(response, format, row.sheet);
  }

  @Get()
  @OpenToReadKeys('all')
  @ApiOperation({
    summary: 'List kept sheets, newest first',
    description: 'In pages, each with the cursor of the next.',
  })
  @ApiOkResponse({ description: 'A page.', type: SheetPage })
  @ApiProblems(400)
  async list(@MakerId() maker: string, @Query() page: PageQuery): Promise<SheetPage> {
    const { items, next } = await this.sheets.list(maker, page);
    return { items: items.map(sheetEntry), next };
  }

  @Get(':id')
  @OpenToReadKeys('one')
  @ID
  @ApiOperation({
    summary: 'Read a kept sheet',
    description: 'It is as it was made, whatever has become of its inputs.',
  })
  @ApiSheet(200, 'The sheet, in the form accepted.', { ETag: ETAG })
  @ApiProblems(400, 404)
  async read(
    @MakerId() maker: string,
    @Id() id: string,
    @Query() { unit }: SheetUnitQuery,
    @AcceptedFormat() format: SheetFormat,
    @Res() response: Response,
  ): Promise<void> {
    const row = await this.sheets.read(maker, id);
    // Each form of a kept sheet stays as it is; another key may open less of it.
    response.set('Cache-Control', 'private, max-age=31536000, immutable').vary('Authorization');
    sendKeptSheet(response, format, row.sheet, unit ?? undefined);
  }

  @Get(':id/inputs-changed')
  @OpenToReadKeys('one')
  @ID
  @ApiOperation({
    summary: 'Read whether what a kept sheet was made from has changed',
    description: 'The sheet itself never changes, and may be kept for good by whoever read it; ask this again.',
  })
  @ApiOkResponse({ description: 'What has changed since.', type: InputsChangedDto })
  @ApiProblems(404)
  async inputsChanged(@MakerId() maker: string, @Id() id: string): Promise<InputsChangedDto> {
    return inputsChangedOf(await this.sheets.readWithChanges(maker, id));
  }

  @Get(':id/inputs')
  @ID
  @ApiOperation({
    summary: 'Read what a kept sheet was made from, and whether that has changed',
    description: 'The request that would compute it again, and the versions its records are at now.',
  })
  @ApiOkResponse({ description: 'The snapshot, the versions then and now.', type: SheetInputsDto })
  @ApiProblems(404)
  async inputs(@MakerId() maker: string, @Id() id: string): Promise<SheetInputsDto> {
    return sheetInputs(await this.sheets.readWithChanges(maker, id));
  }

  @ReportsErasure()
  @Delete(':id')
  @HttpCode(204)
  @ID
  @ApiOperation({
    summary: 'Erase a kept sheet, with its snapshot',
    description: 'Hand-offs and read keys of it go with it.',
  })
  @ApiNoContentResponse({ description: 'Erased.' })
  @ApiProblems(404)
  remove(@MakerId() maker: string, @Id() id: string): Promise<void> {
    return this.sheets.remove(maker, id);
  }
}
