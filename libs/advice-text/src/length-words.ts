import { inchesText } from '#measure';
import type { Tape } from './tape.ts';

/** A length in a sentence, without its sign: to the millimetre, or to ⅛ in. */
export function lengthWords(mm: number, tape: Tape): string {
  const size = Math.abs(mm);
  return tape === 'in' ? `${inchesText(size)} in` : `${Math.round(size) / 10} cm`;
}
