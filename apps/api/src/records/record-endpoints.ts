import { applyDecorators, Delete, Get, HttpCode, Post, Put, type Type } from '@nestjs/common';
import {
  ApiCreatedResponse,
  ApiHeader,
  ApiNoContentResponse,
  ApiOkResponse,
  ApiOperation,
  ApiParam,
} from '@nestjs/swagger';
import { ReportsErasure } from '../storage/reports-erasure.ts';
import { ApiProblems, BODY_PROBLEMS } from '../http/api-problems.ts';
import { TakesIdempotencyKey } from '../idempotency/takes-idempotency-key.ts';

const ETAG = {
  ETag: { description: 'The version, for If-Match.', schema: { type: 'string' as const, example: '"1"' } },
};
const LOCATION = { Location: { description: 'Where it is kept.', schema: { type: 'string' as const } } };
const ID = ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' } });
const ifMatch = (required: boolean) =>
  ApiHeader({
    name: 'If-Match',
    required,
    description: 'The ETag of what was read.',
    schema: { type: 'string', example: '"1"' },
  });

/** The five endpoints of a kind of record; `what` is "a body". */
export const Creates = (what: string, kept: Type) =>
  applyDecorators(
    Post(),
    TakesIdempotencyKey(),
    ApiOperation({ summary: `Keep ${what}`, description: 'It is kept as it was entered, with an id and version 1.' }),
    ApiCreatedResponse({ description: 'Kept.', type: kept, headers: { ...ETAG, ...LOCATION } }),
    ApiProblems(...BODY_PROBLEMS),
  );

export const Lists = (what: string, page: Type) =>
  applyDecorators(
    Get(),
    ApiOperation({ summary: `List ${what}, newest first`, description: 'In pages, each with the cursor of the next.' }),
    ApiOkResponse({ description: 'A page.', type: page }),
    ApiProblems(400),
  );

export const Reads = (what: string, kept: Type) =>
  applyDecorators(
    Get(':id'),
    ID,
    ApiOperation({ summary: `Read ${what}`, description: 'As it was entered, with the version it is at.' }),
    ApiOkResponse({ description: 'As it was entered.', type: kept, headers: ETAG }),
    ApiProblems(404),
  );

export const Replaces = (what: string, kept: Type) =>
  applyDecorators(
    Put(':id'),
    ID,
    ifMatch(true),
    ApiOperation({
      summary: `Change ${what}: the whole document`,
      description:
        'What is left out of the document is left out of what is kept. If-Match says which version was read.',
    }),
    ApiOkResponse({ description: 'Changed.', type: kept, headers: ETAG }),
    ApiProblems(...BODY_PROBLEMS, 404, 412, 428),
  );

export const Erases = (what: string) =>
  applyDecorators(
    Delete(':id'),
    ReportsErasure(),
    HttpCode(204),
    ID,
    ifMatch(false),
    ApiOperation({
      summary: `Erase ${what}`,
      description: 'If-Match is heeded where it is sent. Sheets made from it stay: they hold what they were made from.',
    }),
    ApiNoContentResponse({ description: 'Erased.' }),
    ApiProblems(400, 404, 412),
  );
