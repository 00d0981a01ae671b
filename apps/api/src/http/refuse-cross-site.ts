import type { NextFunction, Request, Response } from 'express';
import { HttpProblem } from './problem.ts';

const SAFE = ['GET', 'HEAD', 'OPTIONS'];

/**
 * Refuses what the page of another site has a browser send to change something here. Browsers say where a request comes
 * from in Sec-Fetch-Site, older ones in Origin; programs that are no browser send neither.
 */
export function refuseCrossSite(request: Request, _response: Response, next: NextFunction): void {
  if (SAFE.includes(request.method) || isOwn(request)) return next();
  next(new HttpProblem(403, 'cross-site', 'Pages of other sites may not change anything here.'));
}

function isOwn({ headers }: Request): boolean {
  const site = headers['sec-fetch-site'];
  if (site !== undefined) return site === 'same-origin' || site === 'none';
  const { origin } = headers;
  return origin === undefined || (URL.canParse(origin) && new URL(origin).host === (headers.host ?? '').toLowerCase());
}
