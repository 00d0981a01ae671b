import { json, type NextFunction, type Request, type RequestHandler, type Response } from 'express';
import { BODY_LIMIT, guardBody, SHEET_LIMIT } from './body-guard.ts';
import { HttpProblem } from './problem.ts';

/** Refuses a body that is not JSON: nothing else is understood, and a plain form of another site cannot write here. */
function onlyJson(request: Request, _response: Response, next: NextFunction): void {
  const hasBody =
    request.headers['transfer-encoding'] !== undefined || Number(request.headers['content-length'] ?? 0) > 0;
  if (!hasBody || request.is('application/json')) return next();
  next(new HttpProblem(415, 'not-json', 'Send JSON, with the header Content-Type: application/json.'));
}

/** A sheet that is read in is larger than anything a maker enters. */
const SHEET_PATH = '/v1/target-sheets/import';

/** The handlers that read a request's body. */
export function readBody(): RequestHandler[] {
  const entered = json({ limit: BODY_LIMIT, verify: guardBody });
  const sheet = json({ limit: SHEET_LIMIT, verify: guardBody });
  return [onlyJson, (request, ...rest) => (request.path === SHEET_PATH ? sheet : entered)(request, ...rest)];
}
