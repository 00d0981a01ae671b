import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsOptional, ValidateBy } from 'class-validator';
import type { FieldWords } from '../http/fields.ts';

const DAY_OR_TIME = /^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2}))?$/;

/** When a measure was taken: a day, or a time with its offset (RFC 3339). */
export function DayOrTimeField({ optional = false, ...words }: FieldWords): PropertyDecorator {
  return applyDecorators(
    ApiProperty({
      type: 'string',
      maxLength: 35,
      required: !optional,
      nullable: true,
      example: words.example,
      ...(words.description !== undefined && { description: words.description }),
    }),
    IsOptional(),
    ValidateBy({
      name: 'takenAt',
      validator: {
        validate: isDayOrTime,
        defaultMessage: () => 'must be a day (2026-01-31) or a time (2026-01-31T18:30:00Z)',
      },
    }),
  );
}

function isDayOrTime(text: unknown): boolean {
  if (typeof text !== 'string' || !DAY_OR_TIME.test(text) || Number.isNaN(Date.parse(text))) return false;
  const day = text.slice(0, 10);
  return new Date(`${day}T00:00:00Z`).toISOString().startsWith(day);
}
