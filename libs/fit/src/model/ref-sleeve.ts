import { plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import { INPUTS } from './inputs.ts';

const { refSleeve, refNeckWidth, refCrossBack, refChestWidth, refThickness } = INPUTS;

/** Nape to cuff of a garment that fits whose sleeve begins beside its back: half of what lies between the sleeves, and the sleeve. mm */
export function fromAcrossBack({ ref }: Choices): Quantity {
  if (ref.sleeveFromCentreBack) return refSleeve;
  if (ref.widthGiven) return plus(times(0.5, refCrossBack), refSleeve);
  return plus(times(0.5, refChestWidth), times(-(4 - Math.PI) / 4, refThickness), refSleeve);
}

/** Of one whose sleeve begins at its neck. mm */
export function fromNeck({ ref }: Choices): Quantity {
  return ref.sleeveFromCentreBack ? refSleeve : plus(times(0.5, refNeckWidth), refSleeve);
}
