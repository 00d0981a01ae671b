import { applyDecorators, SetMetadata } from '@nestjs/common';
import { ApiBearerAuth } from '@nestjs/swagger';
import { ApiProblems } from '../../http/api-problems.ts';

export const OPENS = 'open-to-read-keys';

/** `one`: a key for this sheet or for all; `all`: a key for all only. */
export type Opens = 'one' | 'all';

/** Marks an operation as one that a planner may use with a read key. No other takes one. */
export const OpenToReadKeys = (which: Opens) =>
  applyDecorators(SetMetadata(OPENS, which), ApiBearerAuth(), ApiProblems(401, 403));
