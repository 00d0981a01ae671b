import type { NextFunction, Request, Response } from 'express';

/**
 * Lets a request that names what it knows be answered so. Node's `fetch` sends `Cache-Control: no-cache` beside If-None-Match, and
 * express then answers in full; but that header is for caches on the way (RFC 9111, section 5.2.1.4), and here is no cache.
 */
export function honourIfNoneMatch({ headers }: Request, _response: Response, next: NextFunction): void {
  if (headers['if-none-match'] !== undefined) delete headers['cache-control'];
  next();
}
