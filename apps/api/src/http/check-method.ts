import type { NextFunction, Request, Response } from 'express';
import { methodsAt, takesMethod } from './methods-at.ts';
import { HttpProblem } from './problem.ts';

/** What some address takes: `OPTIONS *` asks for all of them (RFC 9110, section 9.3.7). */
const METHODS = ['DELETE', 'GET', 'HEAD', 'OPTIONS', 'POST', 'PUT'];

/** Answers OPTIONS with the methods that an address takes, and refuses a method that a named address does not take. */
export function checkMethod({ app, path, method }: Request, response: Response, next: NextFunction): void {
  if (method !== 'OPTIONS') {
    return takesMethod(app, path, method) ? next() : next(wrongMethod(methodsAt(app, path), response));
  }
  const methods = path === '*' ? METHODS : methodsAt(app, path);
  if (methods.length === 0) return next();
  response.setHeader('Allow', methods.join(', '));
  response.status(204).end();
}

/** The problem of a method that an address does not take; says in `Allow` which it does. */
export function wrongMethod(methods: readonly string[], response: Response): HttpProblem {
  const taken = methods.join(', ');
  response.setHeader('Allow', taken);
  return new HttpProblem(405, 'wrong-method', `This address takes ${taken}; see /docs.`);
}
