import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request } from 'express';
import { ApiError } from './api-error.ts';

const IfMatchHeader = createParamDecorator((_: unknown, context: ExecutionContext): string | undefined => {
  return context.switchToHttp().getRequest<Request>().headers['if-match'];
});

/** Handlers that take the header. */
const TAKING = new WeakSet<object>();

/** The request's If-Match header. */
export function IfMatch(): ParameterDecorator {
  return (target, method, index) => {
    const handler = (target as Readonly<Record<string | symbol, unknown>>)[method ?? ''];
    if (typeof handler === 'function') TAKING.add(handler);
    IfMatchHeader()(target, method, index);
  };
}

export const takesIfMatch = (handler: object): boolean => TAKING.has(handler);

export function etagOf(version: number): string {
  return `"${version}"`;
}

/**
 * Sees that the maker changes the version she has read.
 *
 * @throws DomainError `if-match-unreadable`, `changed-since`
 */
export function expectVersion(ifMatch: string, version: number): void {
  if (isAnyVersion(ifMatch)) return;
  const tags = ifMatch.split(',').map((tag) => tag.trim());
  if (!tags.every((tag) => /^(W\/)?"[^"]*"$/.test(tag))) {
    throw new ApiError('if-match-unreadable', 'If-Match takes the ETag of what you read, in its quotes: "3".');
  }
  if (tags.includes(etagOf(version))) return;
  throw new ApiError(
    'changed-since',
    `It has been changed since you read it. Read it again; it is now at ${etagOf(version)}.`,
  );
}

/** Whether a change is meant for whichever version there is. */
const isAnyVersion = (ifMatch: string): boolean => ifMatch.trim() === '*';

/** @throws DomainError `if-match-missing` */
export function requireIfMatch(ifMatch: string | undefined): string {
  if (ifMatch !== undefined) return ifMatch;
  throw new ApiError('if-match-missing', 'Say which version you change: send its ETag in the header If-Match.');
}
