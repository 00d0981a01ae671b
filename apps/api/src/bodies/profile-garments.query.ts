import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { ArrayMaxSize, IsOptional, Matches } from 'class-validator';
import { MOST_GARMENTS } from '#target-sheet';
import { ID_PATTERN } from '../http/id.ts';

const WORDS = { message: `garments must be ids of kept garments with commas between them, at most ${MOST_GARMENTS}` };

/** The kept garments that fit the wearer of a profile. */
export class ProfileGarmentsQuery {
  @ApiProperty({
    type: 'string',
    required: false,
    maxLength: MOST_GARMENTS * 37,
    description: 'Ids of kept garments that fit, with commas between them.',
  })
  @IsOptional()
  @Transform(({ value }: { value: unknown }) => (typeof value === 'string' ? value.split(',') : value))
  @Matches(ID_PATTERN, { ...WORDS, each: true })
  @ArrayMaxSize(MOST_GARMENTS, WORDS)
  garments?: string[];
}
