import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { ArrayMaxSize, ArrayMinSize, IsArray, IsInt, IsOptional, Max, Min } from 'class-validator';

/** A multiple and what is added to it, as two whole numbers: [6, 2]; or left out. `largest`: of both. */
export function MultipleField({ largest, description }: { readonly largest: number; readonly description: string }) {
  const wrong = `must be two whole numbers from 0 to ${largest}: [6, 2] is a multiple of 6 plus 2`;
  const each = { each: true, message: wrong };
  return applyDecorators(
    ApiProperty({
      type: 'array',
      items: { type: 'integer', minimum: 0, maximum: largest },
      minItems: 2,
      maxItems: 2,
      required: false,
      nullable: true,
      description,
      example: [6, 2],
    }),
    IsOptional(),
    IsArray({ message: wrong }),
    ArrayMinSize(2, { message: wrong }),
    ArrayMaxSize(2, { message: wrong }),
    IsInt(each),
    Min(0, each),
    Max(largest, each),
  );
}
