import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request } from 'express';

/** The one maker of this installation, made by the first migration. */
export const THE_MAKER = '01900000-0000-7000-8000-000000000001';

/** For whom a request acts, where it does not come from the maker herself. */
const actingFor = new WeakMap<Request, string>();

/** Lets a request act for a maker: one that brings a key of hers. */
export function actFor(request: Request, makerId: string): void {
  actingFor.set(request, makerId);
}

/** Whose request it is. Every query is bound to it; when makers sign in, this is where they are distinguished. */
export const MakerId = createParamDecorator((_: unknown, context: ExecutionContext): string => {
  return actingFor.get(context.switchToHttp().getRequest<Request>()) ?? THE_MAKER;
});
