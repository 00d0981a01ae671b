import { Body, Controller, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { Id } from '../http/id.ts';
import { IfMatch } from '../http/if-match.ts';
import { PageQuery } from '../http/page.ts';
import { MakerId } from '../maker/maker-id.ts';
import { answerWith, keptPage } from '../records/answer.ts';
import { Creates, Erases, Lists, Reads, Replaces } from '../records/record-endpoints.ts';
import { garmentDocument } from './garment-document.ts';
import { Garments } from './garments.ts';
import { GarmentDto } from './garment.dto.ts';
import { GarmentPage, KeptGarment } from './kept-garment.dto.ts';

@ApiTags('garments')
@Controller('v1/garments')
export class GarmentsController {
  constructor(private readonly garments: Garments) {}

  @Creates('a garment', KeptGarment)
  async create(@MakerId() maker: string, @Body() dto: GarmentDto, @Res({ passthrough: true }) response: Response) {
    const row = await this.garments.create(maker, garmentDocument(dto));
    response.location(`/v1/garments/${row.id}`);
    return answerWith(response, row);
  }

  @Lists('garments', GarmentPage)
  async list(@MakerId() maker: string, @Query() page: PageQuery) {
    return keptPage(await this.garments.list(maker, page));
  }

  @Reads('a garment', KeptGarment)
  async read(@MakerId() maker: string, @Id() id: string, @Res({ passthrough: true }) response: Response) {
    return answerWith(response, await this.garments.read(maker, id));
  }

  @Replaces('a garment', KeptGarment)
  async replace(
    @MakerId() maker: string,
    @Id() id: string,
    @IfMatch() ifMatch: string | undefined,
    @Body() dto: GarmentDto,
    @Res({ passthrough: true }) response: Response,
  ) {
    return answerWith(response, await this.garments.replace(maker, id, garmentDocument(dto), ifMatch));
  }

  @Erases('a garment')
  remove(@MakerId() maker: string, @Id() id: string, @IfMatch() ifMatch: string | undefined) {
    return this.garments.remove(maker, id, ifMatch);
  }
}
