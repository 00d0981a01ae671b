import { Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { ROUTE_ARGS_METADATA } from '@nestjs/common/constants.js';
import { RouteParamtypes } from '@nestjs/common/internal';
import type { Request } from 'express';
import { takesIfMatch } from './if-match.ts';
import { HttpProblem } from './problem.ts';
import { unexpectedParameters } from './refuse-parameters.ts';

/** Refuses what an operation would pass over in silence: parameters where it takes none, and If-Match where it changes no version. */
@Injectable()
export class UnexpectedInputGuard implements CanActivate {
  private readonly withQuery = new WeakMap<object, boolean>();

  canActivate(context: ExecutionContext): boolean {
    const { query, url, headers } = context.switchToHttp().getRequest<Request>();
    const handler = context.getHandler();
    if (headers['if-match'] !== undefined && !takesIfMatch(handler)) {
      const words = 'If-Match belongs to a change of what has a version (PUT, and DELETE there); leave it out here.';
      throw new HttpProblem(400, 'if-match-unexpected', words);
    }
    if (!url.includes('?') || this.takesQuery(context)) return true;
    const problem = unexpectedParameters(query);
    if (problem !== null) throw problem;
    return true;
  }

  /** Whether the handler has a DTO of its own for the query; then the pipe refuses what is not in it. */
  private takesQuery(context: ExecutionContext): boolean {
    const handler = context.getHandler();
    const known = this.withQuery.get(handler);
    if (known !== undefined) return known;
    const found = hasQuery(context.getClass(), handler.name);
    this.withQuery.set(handler, found);
    return found;
  }
}

function hasQuery(controller: object, method: string): boolean {
  const args = (Reflect.getMetadata(ROUTE_ARGS_METADATA, controller, method) ?? {}) as Record<string, unknown>;
  return Object.keys(args).some((key) => key.startsWith(`${RouteParamtypes.QUERY}:`));
}
