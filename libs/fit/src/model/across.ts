import { plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import type { Girths } from './girths.ts';
import { INPUTS } from './inputs.ts';

/** Across back of the garment: `S + 0.12E`, or the kept one with the same share of ΔE. mm */
export function acrossGarment({ kept, rules }: Choices, { ease }: Girths): Quantity {
  const c = rules['across-back-ease'];
  return kept.acrossBack
    ? plus(INPUTS.refCrossBack, times(c, INPUTS.easeChange))
    : plus(INPUTS.acrossBack, times(c, ease));
}
