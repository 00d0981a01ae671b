import { ApiProperty } from '@nestjs/swagger';

/** One wrong field, as documented. */
class FieldErrorDto {
  @ApiProperty({
    type: 'string',
    required: false,
    description: 'JSON Pointer (RFC 6901) into the body.',
    example: '/body/measures/0/value',
  })
  pointer?: string;
  @ApiProperty({ type: 'string', required: false, description: 'The parameter of the address.' })
  parameter?: string;
  @ApiProperty({ type: 'string', description: 'What would be right.' })
  detail!: string;
}

/** A problem document (RFC 9457), as documented. */
export class ProblemDto {
  @ApiProperty({ type: 'string', enum: ['about:blank'] })
  type!: string;
  @ApiProperty({ type: 'string', description: 'The name of the status.' })
  title!: string;
  @ApiProperty({ type: 'integer', minimum: 400, maximum: 599 })
  status!: number;
  @ApiProperty({ type: 'string', description: 'Stable, for programs.', example: 'invalid' })
  code!: string;
  @ApiProperty({ type: 'string', description: 'What was read, where, and what would be right.' })
  detail!: string;
  @ApiProperty({
    type: () => FieldErrorDto,
    isArray: true,
    maxItems: 100,
    required: false,
    description: 'Every wrong field.',
  })
  errors?: FieldErrorDto[];
}
