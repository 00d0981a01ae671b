import type { NextFunction, Request, RequestHandler, Response } from 'express';
import { HttpProblem } from './problem.ts';
import { hostNameOf, LOOPBACK_NAMES } from './this-machine.ts';

/**
 * Answers only requests that call the service by a name of its own. Without this a web page could point its own name at
 * 127.0.0.1 and read everything here.
 */
export function checkHost(allowed: readonly string[]): RequestHandler {
  const names = new Set([...LOOPBACK_NAMES, ...allowed]);
  return (request: Request, _response: Response, next: NextFunction) => {
    if (names.has(hostNameOf(request))) return next();
    next(new HttpProblem(421, 'wrong-host', 'This service does not go by that name. ALLOWED_HOSTS adds names.'));
  };
}
