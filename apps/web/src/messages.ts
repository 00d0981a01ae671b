import { en } from './messages.en.ts';

/** Every catalogue has the shape of the English one: a translation is one more file, listed here. */
export type Messages = typeof en;
const CATALOGUES: Readonly<Record<string, Messages>> = { en };

const wanted = navigator.languages.map((tag) => tag.split('-')[0] ?? '').find((language) => language in CATALOGUES);
export const say: Messages = CATALOGUES[wanted ?? 'en'] ?? en;
