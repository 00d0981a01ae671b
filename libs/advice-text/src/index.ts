export type { Catalogue, Reader } from './catalogue.ts';
export { errorText } from './error-text.ts';
export { LANGUAGES, type Language } from './language.ts';
export type { Tape } from './tape.ts';
