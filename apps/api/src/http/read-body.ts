import type { IncomingMessage } from 'node:http';
import { raw, type NextFunction, type Request, type RequestHandler, type Response } from 'express';
import { HttpProblem } from './problem.ts';
import { readJson } from './read-json.ts';

const BODY_LIMIT = '64kb';
/** A sheet that is read in is larger than anything a maker enters. */
const SHEET_LIMIT = '512kb';
const SHEET_PATH = '/v1/target-sheets/import';

/** The media type, and what may follow it. */
const JSON_TYPE = /^\s*application\/json\s*(?:;(.*))?$/is;

/** What says its type has passed `onlyJson`; a request of no length need not say any. */
const typed = ({ headers }: IncomingMessage): boolean => headers['content-type'] !== undefined;

/** The handlers that read a request's body. */
export function readBody(): RequestHandler[] {
  const entered = raw({ type: typed, limit: BODY_LIMIT });
  const sheet = raw({ type: typed, limit: SHEET_LIMIT });
  return [onlyJson, (request, ...rest) => (request.path === SHEET_PATH ? sheet : entered)(request, ...rest), asJson];
}

/** Refuses a body that is not JSON: nothing else is understood, and a plain form of another site cannot write here. */
function onlyJson(request: Request, _response: Response, next: NextFunction): void {
  const { headers } = request;
  const hasBody = headers['transfer-encoding'] !== undefined || Number(headers['content-length'] ?? 0) > 0;
  if (!hasBody) return next();
  const type = JSON_TYPE.exec(headers['content-type'] ?? '');
  if (type === null) {
    return next(new HttpProblem(415, 'not-json', 'Send JSON, with the header Content-Type: application/json.'));
  }
  const charset = /(?:^|;)\s*charset\s*=\s*"?([^";\s]*)/i.exec(type[1] ?? '')?.[1] ?? 'utf-8';
  if (/^utf-?8$/i.test(charset)) return next();
  next(new HttpProblem(415, 'not-utf-8', `JSON is read in UTF-8, not in ${charset}.`));
}

/** Puts what the body says in the place of its bytes. */
function asJson(request: Request, _response: Response, next: NextFunction): void {
  const body: unknown = request.body;
  if (Buffer.isBuffer(body)) request.body = readJson(body);
  next();
}
