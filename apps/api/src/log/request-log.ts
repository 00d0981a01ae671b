import { randomUUID } from 'node:crypto';
import type { NextFunction, Request, RequestHandler, Response } from 'express';
import type { StructuredLogger } from './structured-logger.ts';

const HEADER = 'X-Request-Id';
/** An id that a proxy may have given: nothing that could forge a line of the log. */
const USABLE = /^[A-Za-z0-9._-]{1,64}$/;

/** The id of the request that is answered. */
export const requestIdOf = (response: Response): string | undefined => response.get(HEADER);

/**
 * Gives every request an id, or the one it brings, and logs it when it is answered: the route, not the address, which may
 * hold anything.
 */
export function requestLog({ pino }: StructuredLogger): RequestHandler {
  const logs = pino.isLevelEnabled('info');
  return (request: Request, response: Response, next: NextFunction) => {
    const given = request.get(HEADER) ?? '';
    const requestId = USABLE.test(given) ? given : randomUUID();
    response.setHeader(HEADER, requestId);
    if (logs) {
      const begun = performance.now();
      response.once('close', () => {
        const { route } = request as { route?: { path?: unknown } };
        const path = typeof route?.path === 'string' ? route.path : undefined;
        const milliseconds = Math.round(performance.now() - begun);
        const status = response.writableFinished ? response.statusCode : 'cut off';
        pino.info({ context: 'Request', requestId, method: request.method, route: path, status, milliseconds });
      });
    }
    next();
  };
}
