import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { IsOptional, ValidateBy } from 'class-validator';

const TIME = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2})$/;

/** A moment with its offset (RFC 3339); handed on in UTC, to the millisecond. */
export function TimeField(description: string): PropertyDecorator {
  return applyDecorators(
    ApiProperty({ type: 'string', format: 'date-time', maxLength: 35, required: false, nullable: true, description }),
    IsOptional(),
    Transform(({ value }: { value: unknown }) => (isTime(value) ? new Date(value).toISOString() : value)),
    ValidateBy({
      name: 'time',
      validator: {
        validate: isTime,
        defaultMessage: (args) => `must be a time with its offset: 2026-01-31T18:30:00Z${hintFor(args?.value)}`,
      },
    }),
  );
}

function isTime(text: unknown): text is string {
  return typeof text === 'string' && TIME.test(text) && !Number.isNaN(Date.parse(text));
}

/** In an address a plus stands for a space. */
function hintFor(value: unknown): string {
  const withPlus = typeof value === 'string' && isTime(value.replace(' ', '+'));
  return withPlus ? '; write the plus in an address as %2B' : '';
}
