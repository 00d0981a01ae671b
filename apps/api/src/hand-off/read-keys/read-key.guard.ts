import { Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request, Response } from 'express';
import { HttpProblem } from '../../http/problem.ts';
import { actFor } from '../../maker/maker-id.ts';
import { OPENS, type Opens } from './open-to-read-keys.ts';
import type { ReadKeyRow } from './read-key.entity.ts';
import { ReadKeys } from './read-keys.ts';

/** Lets a request that brings a read key do what the key opens, for the maker whose key it is, and nothing else. */
@Injectable()
export class ReadKeyGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly keys: ReadKeys,
  ) {}

  canActivate(context: ExecutionContext): boolean | Promise<boolean> {
    const { authorization } = context.switchToHttp().getRequest<Request>().headers;
    return authorization === undefined || this.opens(authorization, context);
  }

  private async opens(authorization: string, context: ExecutionContext): Promise<boolean> {
    const http = context.switchToHttp();
    const request = http.getRequest<Request>();
    const text = /^Bearer +(\S+) *$/i.exec(authorization)?.[1];
    const key = text === undefined ? null : await this.keys.open(text);
    if (key === null) {
      http.getResponse<Response>().set('WWW-Authenticate', 'Bearer');
      throw new HttpProblem(401, 'read-key-unknown', 'This read key opens nothing: it is wrong, expired or revoked.');
    }
    this.check(key, this.reflector.get<Opens | undefined>(OPENS, context.getHandler()), request.params['id']);
    actFor(request, key.makerId);
    return true;
  }

  private check({ targetSheetId }: ReadKeyRow, opens: Opens | undefined, id: unknown): void {
    if (opens === undefined)
      throw new HttpProblem(403, 'read-key-scope', 'A read key opens target sheets and nothing else.');
    if (targetSheetId === null || (opens === 'one' && targetSheetId === id)) return;
    throw new HttpProblem(403, 'read-key-scope', 'This read key opens one sheet, and this is not it.');
  }
}
