import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import { atPointer, type TargetSheet } from '#target-sheet';
import { ApiProblems, BODY_PROBLEMS } from '../http/api-problems.ts';
import { Id } from '../http/id.ts';
import { MakerId } from '../maker/maker-id.ts';
import { SheetComposer } from '../target-sheets/sheet-composer.ts';
import { sheetRequest } from '../target-sheets/sheet-request.ts';
import { TargetSheets } from '../target-sheets/target-sheets.ts';
import { countsAt } from './counts-at.ts';
import { CountsAnswerDto } from './counts.dto.ts';
import { ComputeCountsDto, CountsDto } from './counts-request.dto.ts';

const COUNTED = 'Whole stitches and rows, and what lies between them.';

/** Sheets in whole stitches and rows at a gauge. Nothing of it is stored. */
@ApiTags('target-sheets')
@Controller('v1/target-sheets')
export class CountsController {
  constructor(
    private readonly sheets: TargetSheets,
    private readonly composer: SheetComposer,
  ) {}

  @Post('compute/counts')
  @HttpCode(200)
  @ApiOperation({
    summary: 'Count a sheet that is not kept in stitches and rows; nothing is stored',
    description: 'The same as of a kept sheet, of what is sent along.',
  })
  @ApiOkResponse({ description: COUNTED, type: CountsAnswerDto })
  @ApiProblems(...BODY_PROBLEMS)
  compute(@Body() { request, ...dto }: ComputeCountsDto): CountsAnswerDto {
    return answer(
      atPointer('/request', () => this.composer.compose(sheetRequest(request))),
      dto,
    );
  }

  @Post(':id/counts')
  @HttpCode(200)
  @ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' } })
  @ApiOperation({
    summary: 'Count a kept sheet in stitches and rows at a gauge',
    description:
      'Chosen together, so that each piece closes in stitches and joined edges agree, each dimension in its range where a count lies there.',
  })
  @ApiOkResponse({ description: COUNTED, type: CountsAnswerDto })
  @ApiProblems(...BODY_PROBLEMS, 404)
  async count(@MakerId() maker: string, @Id() id: string, @Body() dto: CountsDto): Promise<CountsAnswerDto> {
    const { sheet } = await this.sheets.read(maker, id);
    return answer(JSON.parse(sheet) as TargetSheet, dto);
  }
}

const answer = (sheet: TargetSheet, dto: CountsDto): CountsAnswerDto =>
  ({ unit: sheet.unit, ...countsAt(sheet, dto) }) as CountsAnswerDto;
