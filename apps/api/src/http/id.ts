import { Param, type PipeTransform } from '@nestjs/common';
import { DomainError } from '#measure';

/** Every id is a UUID, written as we write it. */
export const ID_PATTERN = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

class IdPipe implements PipeTransform<string, string> {
  transform(id: string): string {
    if (ID_PATTERN.test(id)) return id;
    throw new DomainError('not-found', 'There is nothing with this id; ids are UUIDs in lower case.');
  }
}

/** The id in the address. What is not an id names nothing. */
export const Id = () => Param('id', new IdPipe());
