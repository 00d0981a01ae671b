import { Controller, Get } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiProperty, ApiTags, ApiResponse } from '@nestjs/swagger';
import { problemContent } from '../http/api-problems.ts';
import { HttpProblem } from '../http/problem.ts';
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
  @ApiOperation({ summary: 'The process answers' })
  @ApiOkResponse({ description: 'It does.', type: StateDto })
  health(): StateDto {
    return { status: 'ok' };
  }

  @Get('ready')
  @ApiOperation({ summary: 'The database answers too' })
  @ApiOkResponse({ description: 'It does.', type: StateDto })
  @ApiResponse({ status: 503, ...problemContent('The database does not answer.') })
  async ready(): Promise<StateDto> {
    try {
      await this.work.read((manager) => manager.query('SELECT 1'));
      return { status: 'ok' };
    } catch {
      throw new HttpProblem(503, 'not-ready', 'The database does not answer.');
    }
  }
}
