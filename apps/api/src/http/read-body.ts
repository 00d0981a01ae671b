import type { NextFunction, Request, Response } from 'express';
import { HttpProblem } from './problem.ts';
import { readBytes } from './read-bytes.ts';
import { readJson } from './read-json.ts';

const BODY_LIMIT = 64 * 1024;
/** A sheet that is read in is larger than anything a maker enters. */
export const SHEET_LIMIT = 512 * 1024;
/** Everything that is kept, which comes back. */
const EXPORT_LIMIT = 64 * 1024 * 1024;
const LIMITS: Readonly<Record<string, number>> = {
  '/v1/target-sheets/import': SHEET_LIMIT,
  '/v1/import': EXPORT_LIMIT,
};

/** The media type, and what may follow it. */
const JSON_TYPE = /^\s*application\/json\s*(?:;(.*))?$/is;

/** Puts what a request's body says, which must be JSON, into `body`. */
export async function readBody(request: Request, _response: Response, next: NextFunction): Promise<void> {
  const { headers, path } = request;
  const chunked = headers['transfer-encoding'] !== undefined;
  if (chunked || Number(headers['content-length'] ?? 0) > 0) expectJson(headers['content-type'] ?? '');
  // What says its type is read even where it has no length: then it is not JSON.
  if (headers['content-type'] !== undefined && (chunked || headers['content-length'] !== undefined)) {
    request.body = readJson(await readBytes(request, LIMITS[path] ?? BODY_LIMIT));
  }
  next();
}

/** Nothing but JSON in UTF-8 is understood, and a plain form of another site cannot write here. @throws HttpProblem 415 */
function expectJson(contentType: string): void {
  const type = JSON_TYPE.exec(contentType);
  if (type === null) {
    throw new HttpProblem(415, 'not-json', 'Send JSON, with the header Content-Type: application/json.');
  }
  const charset = /(?:^|;)\s*charset\s*=\s*"?([^";\s]*)/i.exec(type[1] ?? '')?.[1] ?? 'utf-8';
  if (/^utf-?8$/i.test(charset)) return;
  throw new HttpProblem(415, 'not-utf-8', `JSON is read in UTF-8, not in ${charset.slice(0, 40)}.`);
}
