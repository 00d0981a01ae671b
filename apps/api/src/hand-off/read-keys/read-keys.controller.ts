import { Body, Controller, Delete, Get, HttpCode, Post, Query, Res } from '@nestjs/common';
import {
  ApiCreatedResponse,
  ApiNoContentResponse,
  ApiOkResponse,
  ApiOperation,
  ApiParam,
  ApiTags,
} from '@nestjs/swagger';
import type { Response } from 'express';
import { ApiProblems, BODY_PROBLEMS } from '../../http/api-problems.ts';
import { Id } from '../../http/id.ts';
import { PageQuery } from '../../http/page.ts';
import { ReportsErasure } from '../../storage/reports-erasure.ts';
import { Idempotent, IdempotentRequest } from '../../idempotency/idempotent-request.ts';
import { TakesIdempotencyKey } from '../../idempotency/takes-idempotency-key.ts';
import { MakerId } from '../../maker/maker-id.ts';
import { KeptReadKey, keptReadKey, NewReadKey, newReadKey, ReadKeyDto, ReadKeyPage } from './read-key.dto.ts';
import { ReadKeys } from './read-keys.ts';

const ID = ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' } });

/** Keys by which planners read sheets. */
@ApiTags('read-keys')
@Controller('v1/read-keys')
export class ReadKeysController {
  constructor(private readonly keys: ReadKeys) {}

  @Post()
  @TakesIdempotencyKey()
  @ApiOperation({
    summary: 'Make a key that lets a planner read one sheet, or all',
    description: 'It opens GET /v1/target-sheets/{id}, and the list where it is for all sheets; nothing else.',
  })
  @ApiCreatedResponse({ description: 'Made.', type: NewReadKey })
  @ApiProblems(...BODY_PROBLEMS)
  async make(
    @MakerId() maker: string,
    @Body() { title, targetSheetId, expiresAt }: ReadKeyDto,
    @Idempotent() request: IdempotentRequest,
    @Res({ passthrough: true }) response: Response,
  ): Promise<NewReadKey> {
    const purpose = { title, targetSheetId: targetSheetId ?? null, expiresAt: expiresAt ?? null };
    const made = await this.keys.make(maker, purpose, request);
    response.location(`/v1/read-keys/${made.row.id}`);
    return newReadKey(made);
  }

  @Get()
  @ApiOperation({ summary: 'List read keys, newest first', description: 'Without the keys themselves.' })
  @ApiOkResponse({ description: 'A page.', type: ReadKeyPage })
  @ApiProblems(400)
  async list(@MakerId() maker: string, @Query() page: PageQuery): Promise<ReadKeyPage> {
    const { items, next } = await this.keys.list(maker, page);
    return { items: items.map(keptReadKey), next };
  }

  @Get(':id')
  @ID
  @ApiOperation({
    summary: 'Read about a read key',
    description: 'What it opens, until when, and when it was last used.',
  })
  @ApiOkResponse({ description: 'Without the key itself.', type: KeptReadKey })
  @ApiProblems(404)
  async read(@MakerId() maker: string, @Id() id: string): Promise<KeptReadKey> {
    return keptReadKey(await this.keys.read(maker, id));
  }

  @Post(':id/revoke')
  @HttpCode(200)
  @ID
  @ApiOperation({ summary: 'Revoke a read key', description: 'It opens nothing any more, and stays in the list.' })
  @ApiOkResponse({ description: 'Revoked.', type: KeptReadKey })
  @ApiProblems(404)
  async revoke(@MakerId() maker: string, @Id() id: string): Promise<KeptReadKey> {
    return keptReadKey(await this.keys.revoke(maker, id));
  }

  @ReportsErasure()
  @Delete(':id')
  @HttpCode(204)
  @ID
  @ApiOperation({ summary: 'Erase a read key', description: 'It opens nothing any more.' })
  @ApiNoContentResponse({ description: 'Erased.' })
  @ApiProblems(404)
  remove(@MakerId() maker: string, @Id() id: string): Promise<void> {
    return this.keys.remove(maker, id);
  }
}
