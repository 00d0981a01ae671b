import type { Message } from '#measure';
import type { Catalogue, Reader } from './catalogue.ts';

/** The sentence of a message that is of this catalogue's kind. */
export function say<Codes>(
  catalogue: Catalogue<Codes>,
  { code, params }: Message<keyof Codes & string, Codes[keyof Codes & string]>,
  reader: Reader,
): string {
  return catalogue[code](params, reader);
}
