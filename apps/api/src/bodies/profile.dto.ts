import { ApiProperty } from '@nestjs/swagger';
import { BODY_DIMENSIONS } from '#body';
import { GARMENT_DIMENSIONS, GARMENT_SLIPS } from '#garment';
import { HOWS } from '#measure';
import { DesignDto } from '../design/design.dto.ts';
import { RulesDto } from '../design/rules.dto.ts';
import { FabricDto } from '../fabrics/fabric.dto.ts';
import type { CrossFieldRules } from '../http/cross-field.ts';
import { ObjectField } from '../http/fields.ts';
import { NoteDto } from '../reference/note.dto.ts';
import { GarmentsDto, garmentsProblems } from '../target-sheets/garments.dto.ts';
import { BodyDto } from './body.dto.ts';

/** A body to look at, and what is to be made for it. */
export class ProfileRequestDto extends GarmentsDto implements CrossFieldRules {
  @ObjectField(() => BodyDto)
  body!: BodyDto;
  @ObjectField(() => DesignDto, {
    optional: true,
    description: 'For the next measure; default: a pullover with drop shoulders, regular, crew neck.',
  })
  design?: DesignDto | null;
  @ObjectField(() => FabricDto, { optional: true, description: 'For the next measure; default: knitted, 3 mm thick.' })
  fabric?: FabricDto | null;
  @ObjectField(() => RulesDto, {
    optional: true,
    description: 'Numbers in place of rules, by name: see /v1/design-rules.',
  })
  rules?: RulesDto | null;

  problems() {
    return garmentsProblems(this);
  }
}

const STATES = ['measured', 'estimated', 'missing'] as const;

const NAME = { type: 'string', enum: [...BODY_DIMENSIONS] } as const;
const PARAMS = {
  type: 'object',
  additionalProperties: true,
  description: 'The values of the text, for programs that have words of their own.',
} as const;
const NUMBER_OR_NULL = { type: 'number', nullable: true } as const;

/** One dimension of a body: what is known of it. */
export class ProfileDimensionDto {
  @ApiProperty(NAME)
  name!: string;
  @ApiProperty({
    type: 'string',
    enum: [...STATES],
    description: 'Entered by the maker; filled in from the others, or from a table; or not known.',
  })
  state!: (typeof STATES)[number];
  @ApiProperty({ type: 'string', enum: ['mm', 'g'] })
  unit!: 'mm' | 'g';
  @ApiProperty(NUMBER_OR_NULL)
  value!: number | null;
  @ApiProperty({ ...NUMBER_OR_NULL, description: 'Standard uncertainty.' })
  u!: number | null;
  @ApiProperty({ ...NUMBER_OR_NULL, description: 'Lower end of the 90 % interval.' })
  low!: number | null;
  @ApiProperty({ ...NUMBER_OR_NULL, description: 'Upper end of the 90 % interval.' })
  high!: number | null;
  @ApiProperty({ type: 'string', enum: [...HOWS], nullable: true })
  how!: string | null;
  @ApiProperty({ type: 'string', description: 'Where the value is from; or why there is none.' })
  from!: string;
  @ApiProperty({ type: 'string', description: 'The same as a code; stable, for programs.' })
  fromCode!: string;
  @ApiProperty(PARAMS)
  fromParams!: object;
  @ApiProperty({ type: 'string', description: 'How to take it.' })
  taking!: string;
}

/** A value of a question: what it would become. */
class RepairDto {
  @ApiProperty(NAME)
  name!: string;
  @ApiProperty({ type: 'number', description: 'mm; weight in g.' })
  value!: number;
}

/** A question about a value that looks like a slip. Nothing is changed by it. */
export class QuestionDto {
  @ApiProperty(NAME)
  name!: string;
  @ApiProperty({ type: 'string', description: 'The likely slip; stable, for programs.' })
  code!: string;
  @ApiProperty(PARAMS)
  params!: object;
  @ApiProperty({ type: 'string' })
  text!: string;
  @ApiProperty({
    type: () => RepairDto,
    isArray: true,
    description: 'What would be right then; none where no known slip explains it.',
  })
  wouldBe!: RepairDto[];
  @ApiProperty({
    type: 'number',
    description: 'How many standard deviations it lies from what the others lead to expect.',
  })
  z!: number;
}

/** A question about a measure of the garment that fits. Nothing is changed by it. */
export class GarmentQuestionDto {
  @ApiProperty({ type: 'string', enum: [...GARMENT_DIMENSIONS] })
  name!: string;
  @ApiProperty({ type: 'string', enum: [...GARMENT_SLIPS], description: 'The likely slip; stable, for programs.' })
  code!: string;
  @ApiProperty(PARAMS)
  params!: object;
  @ApiProperty({ type: 'string' })
  text!: string;
  @ApiProperty({ type: 'number', description: 'What would be right then, mm.' })
  wouldBe!: number;
}

class NextMeasureDto {
  @ApiProperty(NAME)
  name!: string;
  @ApiProperty({
    ...NUMBER_OR_NULL,
    description: 'Uncertainty of the sheet’s main measures together without it, mm; null where they need it.',
  })
  before!: number | null;
  @ApiProperty({ ...NUMBER_OR_NULL, description: 'The same with it.' })
  after!: number | null;
  @ApiProperty({ type: 'string', description: 'How to take it.' })
  how!: string;
}

/** What is known of a body, all dimensions side by side. */
export class BodyProfileDto {
  @ApiProperty({ type: () => ProfileDimensionDto, isArray: true })
  dimensions!: ProfileDimensionDto[];
  @ApiProperty({ type: () => QuestionDto, isArray: true })
  questions!: QuestionDto[];
  @ApiProperty({
    type: () => GarmentQuestionDto,
    isArray: true,
    description: 'About the garment that was sent along, held against the body’s chest where that is known.',
  })
  garmentQuestions!: GarmentQuestionDto[];
  @ApiProperty({ type: () => NextMeasureDto, nullable: true, description: 'The one measure worth taking next.' })
  next!: NextMeasureDto | null;
  @ApiProperty({
    type: () => NoteDto,
    isArray: true,
    description: 'Among them whom the estimates were made from, and whom not.',
  })
  notes!: NoteDto[];
}
