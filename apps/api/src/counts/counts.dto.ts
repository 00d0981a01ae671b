import { ApiProperty, type ApiPropertyOptions } from '@nestjs/swagger';
import type { Counts } from '#counts';
import { PIECE_DIMENSION_NAMES, PIECES } from '#fit';
import { SHEET_UNITS, type SheetUnit } from '#target-sheet';

const PIECE: ApiPropertyOptions = { type: 'string', enum: [...PIECES] };
const NAME: ApiPropertyOptions = { type: 'string', enum: [...PIECE_DIMENSION_NAMES] };
const LENGTH: ApiPropertyOptions = { type: 'number', description: 'In the sheet’s unit.' };
const COUNT = { type: 'integer', minimum: 0 } as const;
const orNull = (options: ApiPropertyOptions): ApiPropertyOptions =>
  ({ ...options, nullable: true }) as ApiPropertyOptions;

class CountedDimensionDto {
  @ApiProperty(NAME)
  name!: string;
  @ApiProperty({ type: 'string', enum: ['across', 'along'], description: 'In stitches, or in rows.' })
  axis!: string;
  @ApiProperty({ type: 'string', enum: ['main', 'rib'] })
  fabric!: string;
  @ApiProperty({ ...COUNT, description: 'Whole stitches or rows, seam allowance included.' })
  count!: number;
  @ApiProperty({ type: 'number', description: 'Finished, in the sheet’s unit.' })
  measures!: number;
  @ApiProperty(orNull({ type: 'number', description: 'As on the sheet, moved along with what it follows.' }))
  low!: number | null;
  @ApiProperty(orNull({ type: 'number', description: 'The same.' }))
  high!: number | null;
  @ApiProperty({ type: 'boolean', description: 'Whether it measures from low to high.' })
  within!: boolean;
}

class CountedRegionDto {
  @ApiProperty({ type: 'string' })
  region!: string;
  @ApiProperty({ type: 'string', enum: ['main', 'rib', 'other'] })
  fabric!: string;
  @ApiProperty(orNull({ ...COUNT, description: 'It begins with; null where the sheet names no width there.' }))
  stitches!: number | null;
  @ApiProperty(COUNT)
  rows!: number;
  @ApiProperty({
    type: 'integer',
    description:
      'Stitches to increase, spread over one row, on the way into the region above; less than 0: to decrease.',
  })
  changeAbove!: number;
}

class IntervalDto {
  @ApiProperty({ ...COUNT, description: 'Every so many rows.' })
  rows!: number;
  @ApiProperty(COUNT)
  times!: number;
}

class HalvesDto {
  @ApiProperty({ type: 'integer', enum: [0, 1], description: 'A centre stitch, where the number is odd.' })
  centre!: number;
  @ApiProperty({ ...COUNT, description: 'On each side of it.' })
  side!: number;
}

class ShapingDto {
  @ApiProperty({ type: 'string', description: 'The edge it is along, as the sheet names it.' })
  edge!: string;
  @ApiProperty({ type: 'integer', enum: [1, 2], description: 'How many sides of the piece are shaped so.' })
  sides!: number;
  @ApiProperty({ type: 'string', enum: ['increase', 'decrease', 'bind-off', 'cast-on', 'curve'] })
  kind!: string;
  @ApiProperty({ ...COUNT, description: 'On one side; of a neck, all.' })
  stitches!: number;
  @ApiProperty({ ...COUNT, description: 'Over so many; 0 for what is done at once.' })
  rows!: number;
  @ApiProperty({ ...COUNT, description: 'Rows worked before it begins.' })
  fromRow!: number;
  @ApiProperty({
    type: () => IntervalDto,
    isArray: true,
    nullable: true,
    description:
      'One stitch at a time, spread evenly. Empty for what is done at once and for a curve; null where there are more stitches than rows.',
  })
  every!: IntervalDto[] | null;
  @ApiProperty({ type: () => HalvesDto, required: false, description: 'Of a neck that lies on a middle line.' })
  halves?: HalvesDto;
}

class PickedUpDto {
  @ApiProperty(PIECE)
  piece!: string;
  @ApiProperty({ type: 'string' })
  edge!: string;
  @ApiProperty(LENGTH)
  length!: number;
  @ApiProperty(COUNT)
  stitches!: number;
  @ApiProperty(orNull({ ...COUNT, description: 'Of an edge that runs along rows, else null.' }))
  rows!: number | null;
  @ApiProperty(orNull({ type: 'number', description: 'Stitches picked up a row there.' }))
  perRow!: number | null;
}

class CountedPieceDto {
  @ApiProperty(PIECE)
  piece!: string;
  @ApiProperty({ type: () => CountedDimensionDto, isArray: true })
  dimensions!: CountedDimensionDto[];
  @ApiProperty({ type: () => CountedRegionDto, isArray: true, description: 'From where work begins.' })
  regions!: CountedRegionDto[];
  @ApiProperty({ type: () => ShapingDto, isArray: true, description: 'From where work begins.' })
  shaping!: ShapingDto[];
  @ApiProperty({ type: () => PickedUpDto, isArray: true, description: 'Of a band: along which edges.' })
  pickUp!: PickedUpDto[];
  @ApiProperty({
    type: 'array',
    items: { type: 'array', items: { type: 'number' }, minItems: 2, maxItems: 2 },
    nullable: true,
    description: 'The sheet’s, with every point where the counts bring it; null where the sheet draws none.',
  })
  outline!: number[][] | null;
}

class OutsideRangeDto {
  @ApiProperty(PIECE)
  piece!: string;
  @ApiProperty(NAME)
  name!: string;
  @ApiProperty(COUNT)
  count!: number;
  @ApiProperty(LENGTH)
  measures!: number;
  @ApiProperty(LENGTH)
  low!: number;
  @ApiProperty(LENGTH)
  high!: number;
  @ApiProperty({
    type: 'string',
    enum: ['no-count', 'not-together'],
    description: 'No whole number lies in the range; or none does that closes with the others.',
  })
  reason!: string;
}

/** A sheet in whole stitches and rows. */
export class CountsAnswerDto {
  @ApiProperty({ type: 'string', enum: [...SHEET_UNITS] })
  unit!: SheetUnit;
  @ApiProperty({ type: 'string', enum: ['own-gauge', 'as-above'], description: 'How the rib’s stitches come.' })
  rib!: Counts['rib'];
  @ApiProperty({ type: () => CountedPieceDto, isArray: true })
  pieces!: CountedPieceDto[];
  @ApiProperty({ type: () => OutsideRangeDto, isArray: true, description: 'What could not be kept in its range.' })
  outside!: OutsideRangeDto[];
}
