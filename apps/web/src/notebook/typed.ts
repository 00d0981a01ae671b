/** Which tape she reads: centimetres (and kilograms) or inches (and pounds). */
export const TAPES = ['cm', 'in'] as const;
export type Tape = (typeof TAPES)[number];

/** A value as it was written: the text untouched, and the tape in use when it was written. */
export interface Typed {
  readonly text: string;
  readonly tape: Tape;
}

/** The text with what was typed now. A field that was empty takes the tape in use; a filled one keeps the tape it was written with. */
export function retyped(before: Typed | undefined, text: string, tape: Tape): Typed {
  return { text, tape: before === undefined || before.text.trim() === '' ? tape : before.tape };
}
