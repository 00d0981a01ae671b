import type { DomainError } from '#measure';
import type { ErrorParams } from './error-params.ts';
import { errors as en } from './en/errors.ts';
import type { Language } from './language.ts';

type ErrorTexts = { readonly [Code in keyof ErrorParams]: (params: ErrorParams[Code]) => string };

const TEXTS: Readonly<Record<Language, ErrorTexts>> = { en };

/** What a maker is told of an error: what was read, and what would be right. A code that is in no catalogue is given as it is. */
export function errorText(
  { code, params, sentence }: Pick<DomainError, 'code' | 'params' | 'sentence'>,
  language: Language = 'en',
): string {
  if (sentence !== null) return sentence;
  const texts = TEXTS[language] as Readonly<Record<string, (params: object) => string>>;
  return Object.hasOwn(texts, code) ? texts[code]!(params) : code;
}
