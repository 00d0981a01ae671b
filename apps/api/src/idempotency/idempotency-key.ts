import { createHash } from 'node:crypto';
import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request } from 'express';
import { DomainError } from '#measure';
import { ApiError } from '../http/api-error.ts';

const LONGEST = 200;

/** The request's Idempotency-Key header; null without one. @throws DomainError `idempotency-key-unreadable` */
export const IdempotencyKey = createParamDecorator((_: unknown, context: ExecutionContext): string | null =>
  idempotencyKeyOf(context.switchToHttp().getRequest<Request>()),
);

export function idempotencyKeyOf(request: Request): string | null {
  const key = request.header('idempotency-key');
  if (key === undefined) return null;
  if (/^[\x21-\x7e]+$/.test(key) && key.length <= LONGEST) return key;
  throw new ApiError(
    'idempotency-key-unreadable',
    `Idempotency-Key takes 1 to ${LONGEST} visible ASCII characters, such as a UUID.`,
  );
}

/** What two requests have in common only when they ask for the same. `request` is plain data, its keys in a fixed order. */
export const fingerprintOf = (request: object): string =>
  createHash('sha256').update(JSON.stringify(request)).digest('hex');

/** The error of a key that was sent with another request before. */
export const keyReused = (): DomainError =>
  new ApiError(
    'idempotency-key-reused',
    'This Idempotency-Key was sent with another request before; send each new request with a key of its own.',
  );
