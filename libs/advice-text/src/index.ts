export type { Catalogue, Reader } from './catalogue.ts';
export { errorText } from './error-text.ts';
export { howToMeasure } from './how-to-measure.ts';
export type { Language } from './language.ts';
export { lengthWords } from './length-words.ts';
export { noteWithText, type NoteWithText } from './note-with-text.ts';
export type { Tape } from './tape.ts';
export { text } from './text.ts';
export type { TextCodes, Texts } from './texts.ts';
