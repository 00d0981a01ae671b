import { createParamDecorator, Injectable, type ExecutionContext, type PipeTransform } from '@nestjs/common';
import type { Request } from 'express';
import { HandOffSettings } from '../hand-off-settings.ts';

/** Where planners reach this service: what the operator says, else the address it is asked at (whose name has been checked). */
@Injectable()
class PublicOriginPipe implements PipeTransform<string, string> {
  constructor(private readonly settings: HandOffSettings) {}

  transform(asked: string): string {
    return this.settings.publicUrl ?? asked;
  }
}

const AskedAt = createParamDecorator((_: unknown, context: ExecutionContext): string => {
  const request = context.switchToHttp().getRequest<Request>();
  return `${request.protocol}://${request.header('host')}`;
});

export const Origin = () => AskedAt(PublicOriginPipe);
