import { meanings as en } from './en/meanings.ts';
import type { Language } from './language.ts';
import type { Meanings, MeaningTexts } from './meanings.ts';

const MEANINGS: Readonly<Record<Language, MeaningTexts>> = { en };

/** What a name means: of a rule what it does, of a dimension where it is, of a check what it compares. */
export const meaning = <Kind extends keyof Meanings>(
  kind: Kind,
  name: Meanings[Kind],
  language: Language = 'en',
): string => MEANINGS[language][kind][name];
