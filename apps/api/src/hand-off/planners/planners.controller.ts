import { Body, Controller, Get, HttpCode, Post, Query, Res, UseFilters } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { ApiProblems } from '../../http/api-problems.ts';
import { Id } from '../../http/id.ts';
import { etagOf, IfMatch } from '../../http/if-match.ts';
import { PageQuery } from '../../http/page.ts';
import { Idempotent, IdempotentRequest } from '../../idempotency/idempotent-request.ts';
import { TakesIdempotencyKey } from '../../idempotency/takes-idempotency-key.ts';
import { MakerId } from '../../maker/maker-id.ts';
import { Creates, Erases, Lists, Reads, Replaces } from '../../records/record-endpoints.ts';
import { HandOffSettings } from '../hand-off-settings.ts';
import { HandOffs } from '../outbox/hand-offs.ts';
import { Origin } from '../outbox/origin.ts';
import { PlannerLacksFilter } from '../outbox/planner-lacks.filter.ts';
import {
  keptPlanner,
  KeptPlanner,
  PlannerPage,
  plannerWithSecret,
  PlannerWithSecret,
  previewDto,
  PreviewDto,
  PreviewQuery,
  TestDto,
} from './kept-planner.dto.ts';
import { PlannerDto } from './planner.dto.ts';
import { PlannerTest } from './planner-test.ts';
import { Planners, type WithSecret } from './planners.ts';
import { readPlanner } from './read-planner.ts';

const ID = ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' } });

/** The planners that sheets are handed on to. */
@ApiTags('planners')
@Controller('v1/planners')
export class PlannersController {
  constructor(
    private readonly planners: Planners,
    private readonly handOffs: HandOffs,
    private readonly test: PlannerTest,
    private readonly settings: HandOffSettings,
  ) {}

  @Creates('a planner', PlannerWithSecret)
  async create(
    @MakerId() maker: string,
    @Body() dto: PlannerDto,
    @Idempotent() request: IdempotentRequest,
    @Res({ passthrough: true }) response: Response,
  ) {
    const made = await this.planners.register(maker, readPlanner(dto, this.settings.addresses), request);
    response.location(`/v1/planners/${made.planner.id}`);
    return withEtag(response, made);
  }

  @Lists('planners', PlannerPage)
  async list(@MakerId() maker: string, @Query() page: PageQuery): Promise<PlannerPage> {
    const { items, next } = await this.planners.list(maker, page);
    return { items: items.map(keptPlanner), next };
  }

  @Reads('a planner', KeptPlanner)
  async read(@MakerId() maker: string, @Id() id: string, @Res({ passthrough: true }) response: Response) {
    const planner = await this.planners.read(maker, id);
    response.set('ETag', etagOf(planner.version));
    return keptPlanner(planner);
  }

  @Replaces('a planner', PlannerWithSecret)
  async replace(
    @MakerId() maker: string,
    @Id() id: string,
    @IfMatch() ifMatch: string | undefined,
    @Body() dto: PlannerDto,
    @Res({ passthrough: true }) response: Response,
  ) {
    const document = readPlanner(dto, this.settings.addresses);
    return withEtag(response, await this.planners.change(maker, id, document, ifMatch));
  }

  @Erases('a planner')
  remove(@MakerId() maker: string, @Id() id: string, @IfMatch() ifMatch: string | undefined): Promise<void> {
    return this.planners.remove(maker, id, ifMatch);
  }

  @Post(':id/secret')
  @TakesIdempotencyKey()
  @HttpCode(200)
  @ID
  @ApiOperation({
    summary: 'Make a new signing secret',
    description: 'For a day hand-offs are signed with the old one too, so that the planner can be changed in between.',
  })
  @ApiOkResponse({ description: 'The new secret, shown this once.', type: PlannerWithSecret })
  @ApiProblems(404, 422)
  async replaceSecret(
    @MakerId() maker: string,
    @Id() id: string,
    @Idempotent() request: IdempotentRequest,
    @Res({ passthrough: true }) response: Response,
  ) {
    return withEtag(response, await this.planners.replaceSecret(maker, id, request));
  }

  @Post(':id/pause')
  @HttpCode(200)
  @ID
  @ApiOperation({
    summary: 'Send nothing for now',
    description: 'What is handed on waits until the planner is resumed.',
  })
  @ApiOkResponse({ description: 'Paused.', type: KeptPlanner })
  @ApiProblems(404)
  async pause(@MakerId() maker: string, @Id() id: string): Promise<KeptPlanner> {
    return keptPlanner(await this.planners.pause(maker, id));
  }

  @Post(':id/resume')
  @HttpCode(200)
  @ID
  @ApiOperation({
    summary: 'Send again',
    description: 'Also after the planner stopped (410). What waited is tried for a day more.',
  })
  @ApiOkResponse({ description: 'Active.', type: KeptPlanner })
  @ApiProblems(404)
  async resume(@MakerId() maker: string, @Id() id: string): Promise<KeptPlanner> {
    const planner = await this.planners.resume(maker, id);
    this.handOffs.wake();
    return keptPlanner(planner);
  }

  @Post(':id/test')
  @HttpCode(200)
  @ID
  @ApiOperation({
    summary: 'Send a signed test now and see what the planner answers',
    description: 'The body is `{"test":true}`. It is sent once and not kept. It takes up to 20 seconds.',
  })
  @ApiOkResponse({ description: 'What came of it.', type: TestDto })
  @ApiProblems(404, 422)
  async send(@MakerId() maker: string, @Id() id: string): Promise<TestDto> {
    return this.test.send(await this.planners.read(maker, id));
  }

  @Get(':id/preview')
  @ID
  @UseFilters(PlannerLacksFilter)
  @ApiOperation({
    summary: 'See exactly what the planner would be sent',
    description: 'Or why it would be refused: what the sheet lacks that the planner requires.',
  })
  @ApiOkResponse({ description: 'To the letter.', type: PreviewDto })
  @ApiProblems(400, 404, 422)
  async preview(
    @MakerId() maker: string,
    @Id() id: string,
    @Query() { targetSheet }: PreviewQuery,
    @Origin() origin: string,
  ): Promise<PreviewDto> {
    return previewDto(await this.handOffs.preview(maker, id, targetSheet, origin));
  }
}

function withEtag(response: Response, made: WithSecret): PlannerWithSecret {
  response.set('ETag', etagOf(made.planner.version));
  return plannerWithSecret(made);
}
