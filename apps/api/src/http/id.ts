import { Param, type PipeTransform } from '@nestjs/common';
import { ApiError } from './api-error.ts';

/** Every id is a UUID, written as we write it. */
export const ID_PATTERN = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

class IdPipe implements PipeTransform<string, string> {
  transform(id: string): string {
    if (ID_PATTERN.test(id)) return id;
    throw new ApiError('not-found', 'There is nothing with this id; ids are UUIDs in lower case.');
  }
}

/** The id in the address. What is not an id names nothing. */
export const Id = () => Param('id', new IdPipe());
