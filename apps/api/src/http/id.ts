import { Param, type PipeTransform } from '@nestjs/common';
import { DomainError } from '#measure';

class IdPipe implements PipeTransform<string, string> {
  transform(id: string): string {
    if (/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(id)) return id.toLowerCase();
    throw new DomainError('not-found', 'There is nothing with this id; ids are UUIDs.');
  }
}

/** The id in the address. What is not an id names nothing. */
export const Id = () => Param('id', new IdPipe());
