import { detailOf } from '../http/api-error.ts';
import { DomainError, type Measured } from '#measure';
import type { FieldError } from '../http/problem.ts';

/** Where a lib names a field otherwise than a request does. */
const NAMES: readonly (readonly [RegExp, string])[] = [
  [/\/thicknessU$/, '/thickness/u'],
  [/\/massPerAreaGsm$/, '/gramsPerSquareMetre'],
  [/\/ease\/mm$/, '/ease'],
  [/(Mm|Years)(?=\/|$)/, ''],
];

/** A lib's pointer as one into the request. */
function pointerInRequest(pointer: string): string {
  return NAMES.reduce((text, [theirs, ours]) => text.replace(theirs, ours), pointer);
}

export function fieldError(error: DomainError): FieldError {
  return { pointer: pointerInRequest(error.pointer), detail: detailOf(error) };
}

/** What a lib refuses, as wrong fields of the request. */
export function problemsFrom(attempt: () => unknown): readonly FieldError[] {
  try {
    attempt();
    return [];
  } catch (error) {
    if (error instanceof DomainError) return [fieldError(error)];
    throw error;
  }
}

/** What a lib says of a list of measures; a fault in the value of one that was typed is the text's. */
export function measureErrors(errors: readonly DomainError[], measures: readonly Measured[]): readonly FieldError[] {
  return errors.map(fieldError).map(({ pointer = '', detail }) => {
    const index = /^\/measures\/(\d+)\/value$/.exec(pointer)?.[1];
    const typed = index !== undefined && measures[Number(index)]?.text != null;
    return { pointer: typed ? pointer.replace(/value$/, 'text') : pointer, detail };
  });
}
