import type { DomainError, MessageOf } from '#measure';
import { en } from './en/index.ts';
import type { ErrorCodes } from './error-codes.ts';
import type { Language } from './language.ts';
import { text } from './text.ts';

/** What a maker is told of an error: what was read, and what would be right. A code that is in no catalogue is given as it is. */
export function errorText({ code, params }: Pick<DomainError, 'code' | 'params'>, language: Language = 'en'): string {
  if (!Object.hasOwn(en.error, code)) return code;
  return text('error', { code, params } as MessageOf<ErrorCodes>, { tape: 'cm' }, language);
}
