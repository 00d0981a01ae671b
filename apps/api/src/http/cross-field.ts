import type { FieldError } from './problem.ts';

/** A DTO with rules over several of its fields, checked once each field is valid. Pointers start at the DTO. */
export interface CrossFieldRules {
  problems(): readonly FieldError[];
}

/** What breaks the cross-field rules of a DTO and of those in it. Nothing is checked at or below a pointer in `invalid`. */
export function crossFieldErrors(dto: unknown, invalid: ReadonlySet<string>, pointer = ''): FieldError[] {
  if (typeof dto !== 'object' || dto === null) return [];
  const own = hasCrossFieldRules(dto) && isValid(pointer, invalid) ? dto.problems() : [];
  const below = Object.entries(dto).flatMap(([key, value]) => crossFieldErrors(value, invalid, `${pointer}/${key}`));
  return [...own.map((error) => ({ ...error, pointer: pointer + (error.pointer ?? '') })), ...below];
}

function hasCrossFieldRules(dto: object): dto is CrossFieldRules {
  return typeof (dto as Partial<CrossFieldRules>).problems === 'function';
}

function isValid(pointer: string, invalid: ReadonlySet<string>): boolean {
  return ![...invalid].some(
    (wrong) => wrong === pointer || wrong.startsWith(`${pointer}/`) || pointer.startsWith(`${wrong}/`),
  );
}
