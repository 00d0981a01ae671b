import { ApiProperty } from '@nestjs/swagger';
import { GARMENT_DIMENSIONS } from '#garment';
import type { GrowthInDirection } from '#target-sheet';

const ID = { type: 'string', format: 'uuid' } as const;
const SHARE = { type: 'number', description: 'A share: 0.02 is 2 % larger than made.' } as const;
const U = { type: 'number', description: 'Standard uncertainty of that share.' } as const;

/** Why nothing is offered, by code. */
export const NOT_OFFERED = {
  'not-linked': 'This garment does not name the kept sheet it was made from: give its id as madeFrom.',
  'sheet-gone': 'The sheet that this garment was made from is kept no more, so what was made is not known.',
  'nothing-comparable':
    'None of its measures tells of the growth: measure its chest, shoulder to hem, armhole or sleeve from the seam.',
  'sheet-read-in': 'The sheet was read in, and its yarn is not kept here: enter the growth where the yarn is.',
  'fabric-gone': 'The fabric that the sheet was made from is kept no more: enter the growth where the yarn is.',
  'growth-unlikely':
    'It would be more than half as large again, or less than half: was it made from this sheet, and measured in this unit?',
} as const;

/** One measure of the garment beside what was made. */
class GrowthOfMeasureDto {
  @ApiProperty({ type: 'string', enum: [...GARMENT_DIMENSIONS] })
  name!: string;
  @ApiProperty({ type: 'number', description: 'Off the needles and unwashed, without seam allowance, mm.' })
  made!: number;
  @ApiProperty({
    type: 'number',
    description: 'As it measures now, as the piece would: of a girth the piece’s part, mm.',
  })
  measured!: number;
  @ApiProperty(SHARE)
  growth!: number;
  @ApiProperty(U)
  u!: number;
}

class GrowthInDirectionDto {
  @ApiProperty(SHARE)
  growth!: number;
  @ApiProperty(U)
  u!: number;
  @ApiProperty({ type: () => GrowthOfMeasureDto, isArray: true, description: 'What it was learned from.' })
  from!: readonly GrowthOfMeasureDto[];
}

class GrowthDto {
  @ApiProperty(SHARE)
  across!: number;
  @ApiProperty(SHARE)
  along!: number;
}

/** The kept fabric that a growth is offered to. */
class LearnedFabricDto {
  @ApiProperty(ID)
  id!: string;
  @ApiProperty({ type: 'integer', description: 'The version it is at, for If-Match.' })
  version!: number;
  @ApiProperty({ type: () => GrowthDto, nullable: true, description: 'What it has now: put it back to undo.' })
  growth!: GrowthDto | null;
}

class NotOfferedDto {
  @ApiProperty({ type: 'string', enum: Object.keys(NOT_OFFERED) })
  code!: keyof typeof NOT_OFFERED;
  @ApiProperty({ type: 'string' })
  text!: string;
}

/** What a garment tells of the yarn that it was made of. Nothing is changed by it. */
export class LearnedDto {
  @ApiProperty(ID)
  garmentId!: string;
  @ApiProperty({ ...ID, nullable: true, description: 'The sheet it was made from.' })
  targetSheetId!: string | null;
  @ApiProperty({ type: () => GrowthInDirectionDto, nullable: true, description: 'In the direction of the stitches.' })
  across!: GrowthInDirection | null;
  @ApiProperty({ type: () => GrowthInDirectionDto, nullable: true, description: 'In the direction of the rows.' })
  along!: GrowthInDirection | null;
  @ApiProperty({ type: () => LearnedFabricDto, nullable: true, description: 'The fabric of the sheet.' })
  fabric!: LearnedFabricDto | null;
  @ApiProperty({
    type: () => GrowthDto,
    nullable: true,
    description: 'The growth to put into that fabric; a direction that nothing was learned of stays as it is.',
  })
  offered!: GrowthDto | null;
  @ApiProperty({ type: () => NotOfferedDto, nullable: true, description: 'Why nothing is offered; null where it is.' })
  notOffered!: NotOfferedDto | null;
}
