import { Controller, Get, Param } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import { publishedSizes, type PublishedSizes } from '#body';
import { ApiError } from '../http/api-error.ts';
import { ApiProblems } from '../http/api-problems.ts';
import { SizeTableDto, SizeTablesDto } from './sizes.dto.ts';

@ApiTags('sizes')
@Controller('v1/sizes')
export class SizesController {
  @Get()
  @ApiOperation({
    summary: 'Read the published size tables, with their sources',
    description: 'The classes of EN 13402-3 among them.',
  })
  @ApiOkResponse({ description: 'All of them.', type: SizeTablesDto })
  list(): { items: readonly PublishedSizes[]; next: null } {
    return { items: publishedSizes(), next: null };
  }

  @Get(':id')
  @ApiOperation({ summary: 'Read one of them', description: 'By its id in the list of all.' })
  @ApiParam({ name: 'id', schema: { type: 'string', example: 'craft-yarn-council-woman' } })
  @ApiOkResponse({ description: 'The table.', type: SizeTableDto })
  @ApiProblems(404)
  read(@Param('id') id: string): PublishedSizes {
    const table = publishedSizes().find((candidate) => candidate.id === id);
    if (table !== undefined) return table;
    const known = publishedSizes().map((candidate) => candidate.id);
    throw new ApiError('not-found', `There is no size table of that id. There are: ${known.join(', ')}.`);
  }
}
