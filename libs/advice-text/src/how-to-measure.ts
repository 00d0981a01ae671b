import type { BodyDimension } from '#body';
import type { Language } from './language.ts';
import { text } from './text.ts';

/** How a dimension of the body is measured. */
export const howToMeasure = (name: BodyDimension, language?: Language): string =>
  text('howToMeasure', { code: name, params: {} }, { tape: 'cm' }, language);
