import { ApiProperty } from '@nestjs/swagger';

/** Something to tell the maker. */
export class NoteDto {
  @ApiProperty({ type: 'string', description: 'Stable, for programs.' })
  code!: string;
  @ApiProperty({ type: 'string' })
  text!: string;
  @ApiProperty({ type: 'string', required: false, description: 'Where it is from.' })
  source?: string;
}
