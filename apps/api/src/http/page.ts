import { Transform } from 'class-transformer';
import { ApiProperty } from '@nestjs/swagger';
import { IsInt, IsOptional, IsString, Max, MaxLength, Min } from 'class-validator';

import { ApiError } from './api-error.ts';
import type { PageRows } from '../storage/in-page.ts';
import { TimeField } from './time-field.ts';

const LIMIT = { message: 'limit must be a whole number from 1 to 100' };

/** Which part of a list is asked for. */
export class PageQuery {
  @ApiProperty({
    type: 'integer',
    minimum: 1,
    maximum: 100,
    default: 20,
    required: false,
    description: 'How many at most.',
  })
  @IsOptional()
  @Transform(({ value }: { value: unknown }) =>
    typeof value === 'string' && /^\d{1,3}$/.test(value) ? Number(value) : value,
  )
  @IsInt(LIMIT)
  @Min(1, LIMIT)
  @Max(100, LIMIT)
  limit: number = 20;

  @ApiProperty({
    type: 'string',
    maxLength: 64,
    required: false,
    description: '`next` of the page before; absent for the first page.',
  })
  @IsOptional()
  @IsString({ message: 'cursor must be a text: the `next` of the page before' })
  @MaxLength(64, { message: 'cursor must be the `next` of the page before' })
  cursor?: string;

  @TimeField(
    'Only what was changed at this time or later (of what never changes: made). The time itself is included, so that nothing is missed.',
  )
  since?: string | null;
}

/** The rows that are asked for. @throws DomainError `cursor-unreadable` */
export const rowsOf = ({ limit, cursor, since }: PageQuery): PageRows => ({
  limit,
  before: cursor === undefined ? null : idOfCursor(cursor),
  since: since ?? null,
});

/** A part of a list, newest first; `next` is the cursor of the following part, null at the end. */
export interface Page<T> {
  readonly items: T[];
  readonly next: string | null;
}

/** A page of what was read with one row more than asked for, which shows whether there is another page. */
export function pageOf<R extends { id: string }>(rows: R[], limit: number): Page<R> {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  return { items, next: rows.length > limit && last !== undefined ? cursorOf(last.id) : null };
}

function cursorOf(id: string): string {
  return Buffer.from(id).toString('base64url');
}

/** The id after which a page starts. @throws DomainError `cursor-unreadable` */
function idOfCursor(cursor: string): string {
  const id = Buffer.from(cursor, 'base64url').toString('latin1');
  if (/^[0-9a-f-]{36}$/.test(id)) return id;
  throw new ApiError('cursor-unreadable', 'The cursor is not one that a list gave as `next`.');
}
