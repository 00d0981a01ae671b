import { QueryFailedError } from 'typeorm';

/** PostgreSQL's codes for a row that refers to nothing and for a row that is there already. */
const CODES = ['23503', '23505'];

/** Another unit of work came between: what a row refers to was erased, or the same row was made, at the same moment. */
export class Conflict extends Error {
  constructor(cause: unknown) {
    super('Another unit of work came between.', { cause });
    this.name = 'Conflict';
  }
}

/** On SQLite units of work wait for each other, so that there it would be a fault of ours. */
export function isConflict(error: unknown): boolean {
  const { code } = (error instanceof QueryFailedError ? error.driverError : {}) as { code?: string };
  return CODES.includes(code ?? '');
}
