import type { Tape } from './tape.ts';

/** What a sentence needs to know of its reader. */
export interface Reader {
  readonly tape: Tape;
}

/** Sentences of one kind in one language: one function per code, so that the compiler asks for each. */
export type Catalogue<Codes> = {
  readonly [Code in keyof Codes]: (params: Codes[Code], reader: Reader) => string;
};
