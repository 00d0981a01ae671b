import { Injectable, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import type { Request, Response } from 'express';
import { map, type Observable } from 'rxjs';
import { etagOfText } from './etag-of-text.ts';

/** Lets what is read be kept by whoever read it, to be asked for again by its ETag: what has none gets one of its content. */
@Injectable()
export class EtagInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const http = context.switchToHttp();
    const { method } = http.getRequest<Request>();
    if (method !== 'GET' && method !== 'HEAD') return next.handle();
    const response = http.getResponse<Response>();
    response.setHeader('Cache-Control', 'private, no-cache');
    return next.handle().pipe(map((answer: unknown) => withEtag(answer, response)));
  }
}

function withEtag(answer: unknown, response: Response): unknown {
  if (answer === undefined || response.headersSent || response.hasHeader('ETag')) return answer;
  const text = JSON.stringify(answer);
  response.setHeader('ETag', etagOfText(text));
  if (!response.hasHeader('Content-Type')) response.type('json');
  return text;
}
