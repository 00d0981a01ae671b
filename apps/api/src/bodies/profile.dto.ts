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

/** A wearer to look at, and what is to be made for her. */
export class ProfileRequestDto extends GarmentsDto implements CrossFieldRules {
  @ObjectField(() => BodyDto, { optional: true, description: 'Left out where only garments that fit are known.' })
  body?: BodyDto | null;
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
    description: 'Entered by the maker; filled in from the others, from garments, or from a table; or not known.',
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
  @ApiProperty({
    type: 'boolean',
    description: 'Whether nobody of this size or age was surveyed: the value is as wide as that asks.',
  })
  outsideSurveys!: boolean;
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

const GARMENT = { type: 'integer', minimum: 0, description: 'Its place among `garments`.' } as const;

/** A question about a measure of a garment that fits. Nothing is changed by it. */
export class GarmentQuestionDto {
  @ApiProperty(GARMENT)
  garment!: number;
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

/** A measure of a garment that contradicts the tape, or that of another garment. Until it is answered the tape counts, or each for less. */
export class ContradictionDto {
  @ApiProperty({
    type: 'integer',
    isArray: true,
    description: 'The places among `garments`: of one that contradicts the tape, or of two.',
  })
  garments!: number[];
  @ApiProperty({ type: 'string', enum: [...GARMENT_DIMENSIONS] })
  name!: string;
  @ApiProperty({
    type: 'number',
    description:
      'mm of girth or length: how much more this one says than the rest lets expect, or the second than the first.',
  })
  difference!: number;
  @ApiProperty({ type: 'number', description: 'Standard uncertainty of that difference, mm.' })
  u!: number;
  @ApiProperty({ type: 'string', enum: ['garment-beside-tape', 'garments-apart'] })
  code!: string;
  @ApiProperty(PARAMS)
  params!: object;
  @ApiProperty({ type: 'string' })
  text!: string;
}

/** A number with its standard uncertainty and its 90 % interval, mm. */
class EaseOfGarmentDto {
  @ApiProperty({ type: 'number' })
  value!: number;
  @ApiProperty({ type: 'number' })
  u!: number;
  @ApiProperty({ type: 'number' })
  low!: number;
  @ApiProperty({ type: 'number' })
  high!: number;
}

/** Where an ease lies among the bands. */
class EasePlaceDto {
  @ApiProperty({ type: 'string', enum: ['within', 'between', 'closer-than'] })
  code!: string;
  @ApiProperty(PARAMS)
  params!: object;
  @ApiProperty({ type: 'string' })
  text!: string;
}

/** A garment that fits, and the ease that it has on its wearer. */
export class SweaterDto {
  @ApiProperty(GARMENT)
  garment!: number;
  @ApiProperty({ type: 'string' })
  title!: string;
  @ApiProperty({
    type: () => EaseOfGarmentDto,
    description: 'Said for an ordinary fabric and no layer, as chosen ease is; mm.',
  })
  ease!: EaseOfGarmentDto;
  @ApiProperty({ type: () => EasePlaceDto })
  lies!: EasePlaceDto;
}

/** The ease of the garments whose chest wears right. */
class FavouritesDto {
  @ApiProperty({ type: 'integer', description: 'Of how many garments.' })
  count!: number;
  @ApiProperty({ type: 'number', description: 'mm' })
  mean!: number;
  @ApiProperty({ type: 'number', description: 'Standard deviation, mm.' })
  sd!: number;
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
    description: 'About the garments, held against the body’s chest where that is known.',
  })
  garmentQuestions!: GarmentQuestionDto[];
  @ApiProperty({ type: () => ContradictionDto, isArray: true })
  contradictions!: ContradictionDto[];
  @ApiProperty({ type: () => SweaterDto, isArray: true, description: 'The garments in their order.' })
  sweaters!: SweaterDto[];
  @ApiProperty({
    type: () => FavouritesDto,
    nullable: true,
    description:
      'What ease `{ "as": "favourites" }` is; null for fewer than two garments that have a chest width which wears right.',
  })
  favourites!: FavouritesDto | null;
  @ApiProperty({ type: () => NextMeasureDto, nullable: true, description: 'The one measure worth taking next.' })
  next!: NextMeasureDto | null;
  @ApiProperty({
    type: () => NoteDto,
    isArray: true,
    description: 'Among them whom the estimates were made from, and whom not.',
  })
  notes!: NoteDto[];
}
