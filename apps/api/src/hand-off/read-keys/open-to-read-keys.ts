import { applyDecorators, SetMetadata } from '@nestjs/common';
import { ApiSecurity } from '@nestjs/swagger';
import { ApiProblems } from '../../http/api-problems.ts';

export const OPENS = 'open-to-read-keys';

/** What the OpenAPI document calls the way a read key is brought. */
export const READ_KEY_SCHEME = 'readKey';

/** `one`: a key for this sheet or for all; `all`: a key for all only. */
export type Opens = 'one' | 'all';

/** Marks an operation as one that a planner may use with a read key. No other takes one. */
export const OpenToReadKeys = (which: Opens) =>
  applyDecorators(SetMetadata(OPENS, which), ApiSecurity(READ_KEY_SCHEME), ApiProblems(401, 403));
