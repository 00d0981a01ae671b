import type { Message } from '#measure';
import type { Reader } from './catalogue.ts';
import { en } from './en/index.ts';
import type { Language } from './language.ts';
import type { Texts } from './texts.ts';

const TEXTS: Readonly<Record<Language, Texts>> = { en };

type Say = (params: unknown, reader: Reader) => string;

/** The sentence of a message. */
export function text<Kind extends keyof Texts>(
  kind: Kind,
  message: Message<keyof Texts[Kind] & string, unknown>,
  reader: Reader,
  language: Language = 'en',
): string {
  const catalogue = TEXTS[language][kind] as Readonly<Record<string, Say>>;
  return catalogue[message.code]!(message.params, reader);
}
