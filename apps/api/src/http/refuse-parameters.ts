import type { NextFunction, Request, Response } from 'express';
import { methodsAt } from './methods-at.ts';
import { HttpProblem } from './problem.ts';

/** Where a guard looks at the parameters of each operation. */
const OPERATIONS = /^\/(?:v1\/|health$|ready$)/;

/** Refuses parameters at the page and at the documentation: they take none. */
export function refuseParameters({ app, path, query }: Request, _response: Response, next: NextFunction): void {
  const problem = OPERATIONS.test(path) ? null : unexpectedParameters(query);
  next(problem !== null && methodsAt(app, path).length > 0 ? problem : undefined);
}

/** The problem of parameters at an address that takes none; null without any. */
export function unexpectedParameters(query: object): HttpProblem | null {
  const wrong = Object.keys(query).map((parameter) => ({
    parameter: parameter.slice(0, 80),
    detail: 'there is no such parameter here; this address takes none',
  }));
  if (wrong.length === 0) return null;
  return new HttpProblem(400, 'invalid-parameter', 'This address takes no parameters; see errors.', wrong);
}
