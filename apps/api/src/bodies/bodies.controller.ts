import { Body, Controller, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { Id } from '../http/id.ts';
import { IfMatch } from '../http/if-match.ts';
import { PageQuery } from '../http/page.ts';
import { MakerId } from '../maker/maker-id.ts';
import { answerWith, keptPage } from '../records/answer.ts';
import { Creates, Erases, Lists, Reads, Replaces } from '../records/record-endpoints.ts';
import { bodyDocument } from './body-document.ts';
import { Bodies } from './bodies.ts';
import { BodyDto } from './body.dto.ts';
import { BodyPage, KeptBody } from './kept-body.dto.ts';

@ApiTags('bodies')
@Controller('v1/bodies')
export class BodiesController {
  constructor(private readonly bodies: Bodies) {}

  @Creates('a body', KeptBody)
  async create(@MakerId() maker: string, @Body() dto: BodyDto, @Res({ passthrough: true }) response: Response) {
    const row = await this.bodies.create(maker, bodyDocument(dto));
    response.location(`/v1/bodies/${row.id}`);
    return answerWith(response, row);
  }

  @Lists('bodies', BodyPage)
  async list(@MakerId() maker: string, @Query() page: PageQuery) {
    return keptPage(await this.bodies.list(maker, page));
  }

  @Reads('a body', KeptBody)
  async read(@MakerId() maker: string, @Id() id: string, @Res({ passthrough: true }) response: Response) {
    return answerWith(response, await this.bodies.read(maker, id));
  }

  @Replaces('a body', KeptBody)
  async replace(
    @MakerId() maker: string,
    @Id() id: string,
    @IfMatch() ifMatch: string | undefined,
    @Body() dto: BodyDto,
    @Res({ passthrough: true }) response: Response,
  ) {
    return answerWith(response, await this.bodies.replace(maker, id, bodyDocument(dto), ifMatch));
  }

  @Erases('a body')
  remove(@MakerId() maker: string, @Id() id: string, @IfMatch() ifMatch: string | undefined) {
    return this.bodies.remove(maker, id, ifMatch);
  }
}
