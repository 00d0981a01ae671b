import { plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import type { Girths } from './girths.ts';
import { INPUTS } from './inputs.ts';
import { moreEase } from './more-ease.ts';

/** Across back of the garment: `S + 0.12E`, or the kept one with the same share of the ease that it has more. mm */
export function acrossGarment(choices: Choices, { ease }: Girths): Quantity {
  const c = choices.rules['across-back-ease'];
  return choices.kept.acrossBack
    ? plus(INPUTS.refCrossBack, moreEase(choices, 'across-back', c))
    : plus(INPUTS.acrossBack, times(c, ease));
}
