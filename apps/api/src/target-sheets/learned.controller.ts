import { Controller, Get } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import { ApiProblems } from '../http/api-problems.ts';
import { Id } from '../http/id.ts';
import { MakerId } from '../maker/maker-id.ts';
import { LearnedDto } from './learned.dto.ts';
import { Learned } from './learned.ts';

@ApiTags('garments')
@Controller('v1/garments')
export class LearnedController {
  constructor(private readonly learned: Learned) {}

  @Get(':id/learned')
  @ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' } })
  @ApiOperation({
    summary: 'Read what a kept garment tells of the yarn it was made of',
    description:
      'What it measures now beside what its kept sheet said to make: the growth by washing and wearing. Nothing is changed by it; put it into the fabric to take it over.',
  })
  @ApiOkResponse({ description: 'The growth, from which measures, and the fabric it is offered to.', type: LearnedDto })
  @ApiProblems(404)
  read(@MakerId() maker: string, @Id() id: string): Promise<LearnedDto> {
    return this.learned.of(maker, id);
  }
}
