import type { EaseCodes } from '#fit';
import type { Catalogue } from '../catalogue.ts';
import { inWords } from './in-words.ts';

/** Where an ease lies among the bands. */
export const ease: Catalogue<EaseCodes> = {
  within: ({ category }) => inWords(category),
  between: ({ closer, looser }) => `between ${inWords(closer)} and ${inWords(looser)}`,
  'closer-than': ({ category }) => `closer than ${inWords(category)}`,
};
