import { DomainError } from '#measure';

/** What it finds; the pointer of a DomainError is seen from further out. */
export function pointing<T>(pointer: string, find: () => T): T {
  try {
    return find();
  } catch (error) {
    throw error instanceof DomainError ? error.under(pointer) : error;
  }
}
