import { DomainError } from '#measure';

/** What it answers; a DomainError's pointer is seen from the whole input. */
export function atPointer<T>(place: string, answer: () => T): T {
  try {
    return answer();
  } catch (error) {
    throw error instanceof DomainError ? error.under(place) : error;
  }
}
