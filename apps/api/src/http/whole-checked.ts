import type { FieldError } from './problem.ts';

/** A DTO that, once each of its fields is sound, also looks at itself as a whole. Pointers start at the DTO. */
export interface WholeChecked {
  problems(): readonly FieldError[];
}

/** What is wrong with the whole of a DTO and of those in it. Below a pointer in `unsound` nothing is asked: fields there are wrong already. */
export function problemsOfWhole(dto: unknown, unsound: ReadonlySet<string>, pointer = ''): FieldError[] {
  if (typeof dto !== 'object' || dto === null) return [];
  const own = isWholeChecked(dto) && isSound(pointer, unsound) ? dto.problems() : [];
  const below = Object.entries(dto).flatMap(([key, value]) => problemsOfWhole(value, unsound, `${pointer}/${key}`));
  return [...own.map((error) => ({ ...error, pointer: pointer + (error.pointer ?? '') })), ...below];
}

function isWholeChecked(dto: object): dto is WholeChecked {
  return typeof (dto as Partial<WholeChecked>).problems === 'function';
}

function isSound(pointer: string, unsound: ReadonlySet<string>): boolean {
  return ![...unsound].some(
    (wrong) => wrong === pointer || wrong.startsWith(`${pointer}/`) || pointer.startsWith(`${wrong}/`),
  );
}
