import type { HiddenNumber } from '#body';
import type { SweaterNumbers } from './numbers.ts';
import type { Sweater } from './sweater.ts';

/** Four sweaters in five that fit lie between close and loose (assumed), mm. */
const UNSAID = { mean: 75, sd: 60 };

/** The hidden ease of a sweater, said for an ordinary fabric: anywhere in the band that it fits in; `half` is the scale of eases. mm */
export function easePrior({ name, fits }: Sweater, { easeBands }: SweaterNumbers, half: number): HiddenNumber {
  if (fits === null) return { name, mean: UNSAID.mean * half, sd: UNSAID.sd * half };
  const [from, to] = easeBands[fits];
  return { name, mean: ((from + to) / 2) * half, sd: ((to - from) / Math.sqrt(12)) * half };
}
