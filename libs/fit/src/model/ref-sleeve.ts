import { plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import { INPUTS } from './inputs.ts';

/*
 * Nape to cuff of a garment that fits: its sleeve from the centre back, or half of what lies between its sleeves and the sleeve. mm
 */

const { refSleeve, refNeckWidth, refCrossBack, refChestWidth, refThickness, acrossBack, garmentEase } = INPUTS;

const panel = plus(refChestWidth, times(-(4 - Math.PI) / 2, refThickness));

const withSleeve = ({ ref }: Choices, half: Quantity): Quantity =>
  ref.sleeveFromCentreBack ? refSleeve : plus(half, refSleeve);

/** Of a drop shoulder: to its cross back, or its panel's edge. */
export const fromPanel = (choices: Choices): Quantity =>
  withSleeve(choices, times(0.5, choices.ref.widthGiven ? refCrossBack : panel));

/** Of a squared drop, which goes in by a quarter of what its panel is wider than the back. */
export const fromInset = (choices: Choices): Quantity =>
  withSleeve(
    choices,
    choices.ref.widthGiven ? times(0.5, refCrossBack) : plus(times(0.25, panel), times(0.25, acrossBack)),
  );

/** Of a set-in, whose back is as wide as its wearer's with its share of the ease. */
export const fromAcrossBack = (choices: Choices): Quantity =>
  withSleeve(
    choices,
    choices.ref.widthGiven
      ? times(0.5, refCrossBack)
      : plus(times(0.5, acrossBack), times(choices.rules['across-back-ease'] / 2, garmentEase)),
  );

/** Of one whose sleeve begins at its neck. */
export const fromNeck = (choices: Choices): Quantity => withSleeve(choices, times(0.5, refNeckWidth));
