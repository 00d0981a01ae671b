import { applyDecorators, Body, Controller, Get, HttpCode, Post, Query, Res, UseFilters } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { ApiProblems, BODY_PROBLEMS } from '../../http/api-problems.ts';
import { Id } from '../../http/id.ts';
import { TakesIdempotencyKey } from '../../idempotency/takes-idempotency-key.ts';
import { MakerId } from '../../maker/maker-id.ts';
import { inputIds, KeepSheetDto } from '../../target-sheets/keep-sheet.dto.ts';
import { sheetChoices } from '../../target-sheets/sheet-request.ts';
import { HandOffIntake } from './hand-off-intake.ts';
import {
  firstAnswer,
  HandOffDto,
  handOffDto,
  HandOffPage,
  HandOffsQuery,
  HandOffWithAttemptsDto,
  handOffWithAttempts,
  HandOnDto,
} from './hand-off.dto.ts';
import type { HandOffRow } from './hand-off.entity.ts';
import { HandOffs } from './hand-offs.ts';
import { fingerprintOf, IdempotencyKey } from '../../idempotency/idempotency-key.ts';
import { Origin } from './origin.ts';
import { PlannerLacksFilter } from './planner-lacks.filter.ts';

const ID = ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' } });

const HandsOn = (summary: string) =>
  applyDecorators(
    ID,
    UseFilters(PlannerLacksFilter),
    ApiOperation({
      summary,
      description:
        'It is written down before it is answered, sent in the background, tried for a day, and arrives at least once, always with the same webhook-id. A planner that lacks something it requires is refused at once, with the measures to take.',
    }),
    TakesIdempotencyKey(),
    ApiCreatedResponse({
      description: 'On its way.',
      type: HandOffDto,
      headers: { Location: { description: 'Where to see what came of it.', schema: { type: 'string' } } },
    }),
    ApiProblems(...BODY_PROBLEMS, 404, 409),
  );

/** Sheets on their way to planners. */
@ApiTags('hand-offs')
@Controller('v1')
export class HandOffsController {
  constructor(
    private readonly handOffs: HandOffs,
    private readonly intake: HandOffIntake,
  ) {}

  @Post('target-sheets/:id/hand-offs')
  @HandsOn('Hand a kept sheet on to a planner')
  async handOn(
    @MakerId() maker: string,
    @Id() id: string,
    @Body() { plannerId }: HandOnDto,
    @IdempotencyKey() idempotencyKey: string | null,
    @Origin() origin: string,
    @Res({ passthrough: true }) response: Response,
  ): Promise<HandOffDto> {
    const request = { targetSheetId: id, plannerId };
    const fingerprint = fingerprintOf(request);
    const handOff = { makerId: maker, ...request, idempotencyKey, fingerprint, origin };
    return accepted(response, await this.intake.send(handOff));
  }

  @Post('planners/:id/hand-offs')
  @HandsOn('Make a sheet from a kept body, garment and fabric, keep it and hand it on')
  async makeAndHandOn(
    @MakerId() maker: string,
    @Id() id: string,
    @Body() dto: KeepSheetDto,
    @IdempotencyKey() idempotencyKey: string | null,
    @Origin() origin: string,
    @Res({ passthrough: true }) response: Response,
  ): Promise<HandOffDto> {
    const ids = inputIds(dto);
    const choices = sheetChoices(dto, dto.made ?? []);
    const fingerprint = fingerprintOf({ plannerId: id, ids, choices });
    const handOff = { makerId: maker, plannerId: id, idempotencyKey, fingerprint, origin };
    return accepted(response, await this.intake.makeAndSend(handOff, ids, choices));
  }

  @Get('hand-offs')
  @ApiOperation({
    summary: 'List hand-offs, newest first',
    description: 'All, or those of a planner, of a sheet, or in a state.',
  })
  @ApiOkResponse({ description: 'A page.', type: HandOffPage })
  @ApiProblems(400)
  async list(@MakerId() maker: string, @Query() query: HandOffsQuery): Promise<HandOffPage> {
    const { planner, targetSheet, state } = query;
    const filter = {
      plannerId: planner ?? undefined,
      targetSheetId: targetSheet ?? undefined,
      state: state ?? undefined,
    };
    const { items, next } = await this.handOffs.list(maker, query, filter);
    return { items: items.map(handOffDto), next };
  }

  @Get('hand-offs/:id')
  @ID
  @ApiOperation({ summary: 'See what came of a hand-off', description: 'Every try, with the planner’s answer.' })
  @ApiOkResponse({ description: 'What was sent, and every try.', type: HandOffWithAttemptsDto })
  @ApiProblems(404)
  async read(@MakerId() maker: string, @Id() id: string): Promise<HandOffWithAttemptsDto> {
    return handOffWithAttempts(await this.handOffs.read(maker, id));
  }

  @Post('hand-offs/:id/send-again')
  @HttpCode(200)
  @ID
  @ApiOperation({ summary: 'Send again what was given up', description: 'With the same webhook-id, for a day.' })
  @ApiOkResponse({ description: 'It waits again.', type: HandOffWithAttemptsDto })
  @ApiProblems(404, 409)
  async sendAgain(@MakerId() maker: string, @Id() id: string): Promise<HandOffWithAttemptsDto> {
    return handOffWithAttempts(await this.handOffs.sendAgain(maker, id));
  }
}

function accepted(response: Response, handOff: HandOffRow): HandOffDto {
  response.location(`/v1/hand-offs/${handOff.id}`);
  return firstAnswer(handOff);
}
