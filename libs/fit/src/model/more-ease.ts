import { minus, plus, times, type Quantity } from '#measure';
import type { Choices, ShiftedRegion } from '../design/choices.ts';
import { INPUTS } from './inputs.ts';

/**
 * `c(E − E_g)`: what a region that is kept from the garment that fits has more than that one, c for each of the ease. E_g is less where that region is said to wear
 * close. "As the garment" with a change is that change exactly, whatever its ease is. mm
 */
export function moreEase({ easeFromGarment, regionShift }: Choices, region: ShiftedRegion, c = 1): Quantity {
  const asWhole = easeFromGarment
    ? times(c, INPUTS.easeChange)
    : times(c, minus(INPUTS.chosenEase, INPUTS.garmentEase));
  const shift = regionShift[region];
  return shift === 0 ? asWhole : plus(asWhole, times(-shift * c, INPUTS.regionEase));
}
