/** Which tape she reads: centimetres (and kilograms) or inches (and pounds). */
export const TAPES = ['cm', 'in'] as const;
export type Tape = (typeof TAPES)[number];

/** A value as it was written: the text untouched, and the tape in use when it was written. */
export interface Typed {
  readonly text: string;
  readonly tape: Tape;
}

/**
 * The text with what was typed now. A field that was empty takes the tape in use, and so does a text that was replaced in one
 * stroke; one that was only corrected keeps the tape it was written with.
 */
export function retyped(before: Typed | undefined, text: string, tape: Tape, replaced = false): Typed {
  const old = before?.text.trim() ?? '';
  const keeps = before !== undefined && old !== '' && !replaced && shares(old, text.trim());
  return { text, tape: keeps ? before.tape : tape };
}

/** True where something is left of a text at either end. */
const shares = (old: string, text: string): boolean =>
  text === '' || old.charAt(0) === text.charAt(0) || old.at(-1) === text.at(-1);
