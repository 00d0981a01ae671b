import { Controller, Get, Header } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiTags } from '@nestjs/swagger';
import { targetSheetSchema } from '#target-sheet';

@ApiTags('target-sheets')
@Controller('v1/schemas')
export class SchemasController {
  @Get('target-sheet/1')
  @Header('Content-Type', 'application/schema+json')
  @ApiOperation({
    summary: 'Read the JSON Schema (2020-12) of the target sheet, version 1',
    description: 'It says what every field means, and holds for every sheet of version 1.',
  })
  @ApiOkResponse({ description: 'The schema.', content: { 'application/schema+json': { schema: { type: 'object' } } } })
  targetSheet() {
    return targetSheetSchema;
  }
}
