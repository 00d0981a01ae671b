import type { NextFunction, Request, RequestHandler, Response } from 'express';

/** The addresses that a read key opens. */
const READ_KEY_ADDRESS = /^\/v1\/target-sheets(?:\/[0-9a-f-]{36}(?:\/inputs-changed)?)?$/;

/** What a page may send beside what every page may, what it may read of the answer, and for how long it need not ask again. */
const PREFLIGHT = {
  'Access-Control-Allow-Methods': 'GET, HEAD',
  'Access-Control-Allow-Headers': 'Authorization, If-None-Match',
  'Access-Control-Max-Age': '600',
};
const READABLE = 'ETag, Link, Retry-After';

/**
 * Lets web pages of the origins given read what a read key opens, when they bring one. Without a key they get no leave: a page
 * elsewhere must not pass for the maker. No other address is ever open to them.
 */
export function allowOrigins(origins: readonly string[]): RequestHandler {
  const allowed = new Set(origins);
  return (request: Request, response: Response, next: NextFunction) => {
    if (!READ_KEY_ADDRESS.test(request.path)) return next();
    response.vary('Origin');
    const { origin, authorization } = request.headers;
    if (origin === undefined || !allowed.has(origin)) return next();
    const { method, headers } = request;
    if (method === 'OPTIONS' && headers['access-control-request-method'] !== undefined) {
      response.set('Access-Control-Allow-Origin', origin).set(PREFLIGHT);
      // Asked of a service on the user's own machine or network.
      if (headers['access-control-request-private-network'] === 'true') {
        response.set('Access-Control-Allow-Private-Network', 'true');
      }
    } else if ((method === 'GET' || method === 'HEAD') && authorization !== undefined) {
      response.set('Access-Control-Allow-Origin', origin).set('Access-Control-Expose-Headers', READABLE);
    }
    next();
  };
}
