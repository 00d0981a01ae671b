import type { HiddenNumber } from '#body';
import type { Rules } from '../design/rules.ts';
import type { Sweater } from './sweater.ts';

/** The hidden ease of a sweater, said for an ordinary fabric: anywhere in the band that it fits in, else what sweaters that fit have. mm */
export function easePrior({ name, fits }: Sweater, sized: Rules): HiddenNumber {
  if (fits === null) return { name, mean: sized['sweater-ease'], sd: sized['sweater-ease-spread'] };
  const [from, to] = [sized[`ease-${fits}-from`], sized[`ease-${fits}-to`]];
  return { name, mean: (from + to) / 2, sd: (to - from) / Math.sqrt(12) };
}
