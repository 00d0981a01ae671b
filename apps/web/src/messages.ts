import type { Language } from '#advice-text';
import { en } from './messages.en.ts';

/** Every catalogue has the shape of the English one: a translation is one more file, listed here. */
type Messages = typeof en;
const CATALOGUES: Readonly<Record<Language, Messages>> = { en };

const isKnown = (language: string): language is Language => Object.hasOwn(CATALOGUES, language);
const wanted = navigator.languages.map((tag) => tag.split('-')[0] ?? '').find(isKnown);
export const say: Messages = CATALOGUES[wanted ?? 'en'];
