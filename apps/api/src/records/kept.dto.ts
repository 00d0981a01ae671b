import { ApiProperty } from '@nestjs/swagger';

/** What the storage adds to a document it keeps. */
export class Kept {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'UUID v7.' })
  id!: string;
  @ApiProperty({
    type: 'integer',
    minimum: 1,
    description: 'One more with each change. The ETag is this number in quotes.',
  })
  version!: number;
  @ApiProperty({ type: 'string', format: 'date-time' })
  createdAt!: string;
  @ApiProperty({ type: 'string', format: 'date-time' })
  updatedAt!: string;
}
