import { Injectable, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import type { Request, Response } from 'express';
import { tap, type Observable } from 'rxjs';

/** Says of a page of a list, in the header `Link` too, where the next one and the first are (RFC 8288). */
@Injectable()
export class LinkInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const http = context.switchToHttp();
    return next.handle().pipe(
      tap((answer: unknown) => {
        if (isPage(answer)) setLinks(answer.next, http.getRequest<Request>(), http.getResponse<Response>());
      }),
    );
  }
}

interface SomePage {
  readonly items: readonly unknown[];
  readonly next: string | null;
}

function isPage(answer: unknown): answer is SomePage {
  if (typeof answer !== 'object' || answer === null || !('items' in answer) || !('next' in answer)) return false;
  return Array.isArray(answer.items) && (answer.next === null || typeof answer.next === 'string');
}

function setLinks(next: string | null, { originalUrl, query }: Request, response: Response): void {
  const links: Record<string, string> = {};
  if (next !== null) links['next'] = addressWith(originalUrl, next);
  if (query['cursor'] !== undefined) links['first'] = addressWith(originalUrl, null);
  if (Object.keys(links).length > 0) response.links(links);
}

/** The same address, with another cursor. */
function addressWith(address: string, cursor: string | null): string {
  const { pathname, searchParams } = new URL(address, 'http://localhost');
  searchParams.delete('cursor');
  if (cursor !== null) searchParams.set('cursor', cursor);
  const query = searchParams.toString();
  return query === '' ? pathname : `${pathname}?${query}`;
}
