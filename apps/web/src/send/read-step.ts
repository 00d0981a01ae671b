import { plainNumber } from '../reading/read.ts';

/** A step as people write it: `0,5`, `0.25`, `1/4`. Null where it is none. */
export function readStep(text: string): number | null {
  const parts = text.split('/').map((part) => plainNumber(part));
  const [over = null, under = 1] = parts;
  return parts.length > 2 || over === null || under === null ? null : over / under;
}
