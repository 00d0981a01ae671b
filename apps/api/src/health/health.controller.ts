import { Controller, Get } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiProperty, ApiTags, ApiResponse } from '@nestjs/swagger';
import { problemContent } from '../http/api-problems.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';

class StateDto {
  @ApiProperty({ type: 'string', enum: ['ok'] })
  status!: 'ok';
}

@ApiTags('health')
@Controller()
export class HealthController {
  constructor(private readonly work: UnitOfWork) {}

  @Get('health')
  @ApiOperation({ summary: 'The process answers', description: 'Whatever state the database is in.' })
  @ApiOkResponse({ description: 'It does.', type: StateDto })
  health(): StateDto {
    return { status: 'ok' };
  }

  @Get('ready')
  @ApiOperation({ summary: 'The database takes writes and gives answers', description: 'Requests can be sent.' })
  @ApiOkResponse({ description: 'It does.', type: StateDto })
  @ApiResponse({ status: 503, ...problemContent('It does not; the code says why.') })
  async ready(): Promise<StateDto> {
    await this.work.probe();
    return { status: 'ok' };
  }
}
