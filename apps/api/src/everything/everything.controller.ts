import { Body, Controller, Delete, Get, Header, HttpCode, Post, Query } from '@nestjs/common';
import {
  ApiBody,
  ApiCreatedResponse,
  ApiNoContentResponse,
  ApiOkResponse,
  ApiOperation,
  ApiProperty,
  ApiTags,
} from '@nestjs/swagger';
import { Equals } from 'class-validator';
import { ApiProblems, BODY_PROBLEMS } from '../http/api-problems.ts';
import { Idempotent, IdempotentRequest } from '../idempotency/idempotent-request.ts';
import { TakesIdempotencyKey } from '../idempotency/takes-idempotency-key.ts';
import { MakerId } from '../maker/maker-id.ts';
import { ReportsErasure } from '../storage/reports-erasure.ts';
import { Everything } from './everything.ts';
import { ExportImport } from './export-import.ts';
import { ExportDto, ImportedDto } from './export.dto.ts';

/** Said so that nobody erases by a slip. */
class EraseQuery {
  @ApiProperty({ type: 'string', enum: ['erase-everything'], description: 'Must be `erase-everything`.' })
  @Equals('erase-everything', { message: 'confirm must be erase-everything; it cannot be undone' })
  confirm!: string;
}

@ApiTags('everything')
@Controller('v1')
export class EverythingController {
  constructor(
    private readonly everything: Everything,
    private readonly imports: ExportImport,
  ) {}

  @Get('export')
  @Header('Content-Disposition', 'attachment; filename="easewright-export.json"')
  @ApiOperation({
    summary: 'Take along all that is kept: bodies, garments, fabrics, target sheets, planners, read keys, hand-offs',
    description: 'One JSON document, as it stands at one moment. It holds nothing that opens or signs.',
  })
  @ApiOkResponse({ description: 'All of it.', type: ExportDto })
  export(@MakerId() maker: string): Promise<ExportDto> {
    return this.everything.export(maker);
  }

  @Post('import')
  @TakesIdempotencyKey()
  @ApiOperation({
    summary: 'Read in all that an export holds, with its ids, where nothing is kept yet',
    description: 'All of it is kept, or nothing. Signing secrets and keys are in no export: they have to be made anew.',
  })
  @ApiBody({ type: ExportDto })
  @ApiCreatedResponse({ description: 'All of it is kept.', type: ImportedDto })
  @ApiProblems(...BODY_PROBLEMS, 409)
  import(
    @MakerId() maker: string,
    @Body() json: unknown,
    @Idempotent() request: IdempotentRequest,
  ): Promise<ImportedDto> {
    return this.imports.import(maker, json, request);
  }

  @Delete('everything')
  @ReportsErasure()
  @HttpCode(204)
  @ApiOperation({
    summary: 'Erase all that is kept',
    description:
      'It cannot be undone, so the address must say that it is meant. The daily copies are erased too; backups made by hand, and what PostgreSQL keeps of erased rows until it vacuums, are not.',
  })
  @ApiNoContentResponse({ description: 'Nothing is left.' })
  @ApiProblems(400)
  erase(@MakerId() maker: string, @Query() _confirmed: EraseQuery): Promise<void> {
    return this.everything.erase(maker);
  }
}
