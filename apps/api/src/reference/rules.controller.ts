import { Controller, Get } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiProperty, ApiTags } from '@nestjs/swagger';
import { meaning } from '#advice-text';
import { RULES, RULES_VERSION } from '#fit';

/** As documented; the numbers are `#fit`'s own. */
class RuleDto {
  @ApiProperty({ type: 'string', example: 'ordinary-thickness' })
  name!: string;
  @ApiProperty({ type: 'number' })
  value!: number;
  @ApiProperty({ type: 'string', description: 'mm, or 1 for a share.' })
  unit!: string;
  @ApiProperty({ type: 'string', description: 'What a child’s size does to it.' })
  scale!: string;
  @ApiProperty({ type: 'string', description: 'What it does.' })
  what!: string;
  @ApiProperty({ type: 'string', description: 'The publication; or practice, from memory, assumed.' })
  source!: string;
  @ApiProperty({ type: 'number', description: 'The least an override may be.' })
  min!: number;
  @ApiProperty({ type: 'number', description: 'The most an override may be.' })
  max!: number;
}

class RuleTableDto {
  @ApiProperty({ type: 'string', description: 'Changes whenever a rule does; kept with every sheet.' })
  version!: string;
  @ApiProperty({ type: () => RuleDto, isArray: true })
  items!: RuleDto[];
  @ApiProperty({ type: 'null', description: 'There is one page.' })
  next!: null;
}

const ITEMS: RuleDto[] = RULES.map(({ name, value, unit, scale, source, min, max }) => {
  return { name, value, unit, scale, what: meaning('rule', name), source, min, max };
});

@ApiTags('design rules')
@Controller('v1/design-rules')
export class RulesController {
  @Get()
  @ApiOperation({
    summary: 'Read the numbers of the model, each with its source',
    description: 'A request overrides them by name in `rules`.',
  })
  @ApiOkResponse({ description: 'All of them.', type: RuleTableDto })
  list(): RuleTableDto {
    return { version: RULES_VERSION, items: ITEMS, next: null };
  }
}
