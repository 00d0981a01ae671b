import { ApiExtraModels, ApiProperty, getSchemaPath } from '@nestjs/swagger';
import { BODY_DIMENSIONS, FIGURES } from '#body';
import { NoteDto } from './note.dto.ts';

/** As documented; the values are `#body`'s own. */
class SizeRangeDto {
  @ApiProperty({ type: 'number' })
  low!: number;
  @ApiProperty({
    type: 'number',
    description: 'The one to compute with: the published centre of a class, else the midpoint.',
  })
  mid!: number;
  @ApiProperty({ type: 'number' })
  high!: number;
}

const BY_DIMENSION = {
  type: 'object' as const,
  propertyNames: { enum: [...BODY_DIMENSIONS] },
  additionalProperties: { $ref: getSchemaPath(SizeRangeDto) },
};

@ApiExtraModels(SizeRangeDto)
class SizeRowDto {
  @ApiProperty({ type: 'string', description: 'Id of the table it is a row of.' })
  table!: string;
  @ApiProperty({ type: 'string', example: 'M' })
  size!: string;
  @ApiProperty({ type: 'string', example: 'Craft Yarn Council, woman M' })
  label!: string;
  @ApiProperty({ type: 'number', nullable: true, description: 'The age the size is for, where the table says one.' })
  ageYears!: number | null;
  @ApiProperty({ ...BY_DIMENSION, description: 'As published, in the table’s unit.' })
  published!: object;
  @ApiProperty({ ...BY_DIMENSION, description: 'The same in millimetres.' })
  mm!: object;
}

class SizeMeasureDto {
  @ApiProperty({ type: 'string', enum: [...BODY_DIMENSIONS] })
  name!: string;
  @ApiProperty({ type: 'string', description: 'The words it is printed under.' })
  words!: string;
  @ApiProperty({ type: 'string', description: 'How sure its values are.', example: 'from memory' })
  mark!: string;
}

export class SizeTableDto {
  @ApiProperty({ type: 'string', example: 'craft-yarn-council-woman' })
  id!: string;
  @ApiProperty({ type: 'string' })
  label!: string;
  @ApiProperty({ type: 'string' })
  title!: string;
  @ApiProperty({ type: 'string' })
  publisher!: string;
  @ApiProperty({ type: 'string', enum: FIGURES.filter((figure) => figure !== 'unsaid') })
  figure!: string;
  @ApiProperty({ type: 'string', enum: ['mm', 'cm', '[in_i]'], description: 'The unit it is published in.' })
  unit!: string;
  @ApiProperty({ type: () => SizeMeasureDto, isArray: true })
  measures!: SizeMeasureDto[];
  @ApiProperty({ type: () => SizeRowDto, isArray: true, description: 'Smallest first.' })
  rows!: SizeRowDto[];
  @ApiProperty({ type: () => NoteDto, isArray: true, description: 'Its traps, and what is doubtful in it.' })
  notes!: NoteDto[];
}

export class SizeTablesDto {
  @ApiProperty({ type: () => SizeTableDto, isArray: true })
  items!: SizeTableDto[];
  @ApiProperty({ type: 'null', description: 'There is one page.' })
  next!: null;
}
