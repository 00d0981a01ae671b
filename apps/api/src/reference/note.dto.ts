import { ApiProperty, ApiPropertyOptional } from '@nestjs/swagger';

/** Something to tell the maker. */
export class NoteDto {
  @ApiProperty({ type: 'string', description: 'Stable, for programs.' })
  code!: string;
  @ApiPropertyOptional({
    type: 'object',
    additionalProperties: true,
    description: 'The values of the text, for programs that have words of their own.',
  })
  params?: object;
  @ApiProperty({ type: 'string' })
  text!: string;
  @ApiProperty({ type: 'string', required: false, description: 'Where it is from.' })
  source?: string;
}
