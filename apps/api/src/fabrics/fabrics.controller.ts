import { Body, Controller, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { Id } from '../http/id.ts';
import { IfMatch } from '../http/if-match.ts';
import { PageQuery } from '../http/page.ts';
import { MakerId } from '../maker/maker-id.ts';
import { answerWith, keptPage } from '../records/answer.ts';
import { Creates, Erases, Lists, Reads, Replaces } from '../records/record-endpoints.ts';
import { fabricDocument } from './fabric-document.ts';
import { Fabrics } from './fabrics.ts';
import { FabricDto } from './fabric.dto.ts';
import { FabricPage, KeptFabric } from './kept-fabric.dto.ts';

@ApiTags('fabrics')
@Controller('v1/fabrics')
export class FabricsController {
  constructor(private readonly fabrics: Fabrics) {}

  @Creates('a fabric', KeptFabric)
  async create(@MakerId() maker: string, @Body() dto: FabricDto, @Res({ passthrough: true }) response: Response) {
    const row = await this.fabrics.create(maker, fabricDocument(dto));
    response.location(`/v1/fabrics/${row.id}`);
    return answerWith(response, row);
  }

  @Lists('fabrics', FabricPage)
  async list(@MakerId() maker: string, @Query() page: PageQuery) {
    return keptPage(await this.fabrics.list(maker, page));
  }

  @Reads('a fabric', KeptFabric)
  async read(@MakerId() maker: string, @Id() id: string, @Res({ passthrough: true }) response: Response) {
    return answerWith(response, await this.fabrics.read(maker, id));
  }

  @Replaces('a fabric', KeptFabric)
  async replace(
    @MakerId() maker: string,
    @Id() id: string,
    @IfMatch() ifMatch: string | undefined,
    @Body() dto: FabricDto,
    @Res({ passthrough: true }) response: Response,
  ) {
    return answerWith(response, await this.fabrics.replace(maker, id, fabricDocument(dto), ifMatch));
  }

  @Erases('a fabric')
  remove(@MakerId() maker: string, @Id() id: string, @IfMatch() ifMatch: string | undefined) {
    return this.fabrics.remove(maker, id, ifMatch);
  }
}
