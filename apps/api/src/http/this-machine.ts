import type { NextFunction, Request, RequestHandler, Response } from 'express';
import { HttpProblem } from './problem.ts';

export const LOOPBACK_NAMES = ['localhost', '127.0.0.1', '[::1]'];

/** Proxies say with these for whom they ask. */
const FORWARDED = ['forwarded', 'via', 'x-forwarded-for', 'x-forwarded-host', 'x-forwarded-proto', 'x-real-ip'];

const LOOPBACK_ADDRESS = /^(?:::1|(?:::ffff:)?127\.\d+\.\d+\.\d+)$/;

/** The name that a request calls the service by, without the port. */
export const hostNameOf = ({ headers }: Request): string => (headers.host ?? '').toLowerCase().replace(/:\d+$/, '');

/** Whether a request comes from this machine itself: not by another name, not through a proxy. */
function isFromThisMachine(request: Request): boolean {
  const { headers, socket } = request;
  return (
    LOOPBACK_NAMES.includes(hostNameOf(request)) &&
    LOOPBACK_ADDRESS.test(socket.remoteAddress ?? '') &&
    FORWARDED.every((name) => headers[name] === undefined)
  );
}

/**
 * Whoever sits at this machine is its maker, and needs no key. From anywhere else nothing answers but /health and, with a
 * read key, what read keys open (`ReadKeyGuard`).
 */
export const keepToThisMachine: RequestHandler = (request: Request, response: Response, next: NextFunction) => {
  const { path, method, headers } = request;
  const mayBeOpened = path.startsWith('/v1/') && (headers.authorization !== undefined || method === 'OPTIONS');
  if (path === '/health' || mayBeOpened || isFromThisMachine(request)) return next();
  response.setHeader('WWW-Authenticate', 'Bearer');
  const words =
    'From another machine this takes a read key, with which target sheets can be read: Authorization: Bearer …';
  next(new HttpProblem(401, 'read-key-missing', words));
};
