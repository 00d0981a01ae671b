import type { Choices } from './choices.ts';

/** Whether the front is known to be finished. */
export const frontIsMade = ({ made }: Choices): boolean => made.front || made.frontArmhole || made.frontToUnderarm;

/** Whether the body, or its back, is finished: whatever one measure is given of it, its widths, lengths and rib are what they are. */
export const bodyIsMade = (choices: Choices): boolean =>
  choices.made.back ||
  choices.made.armhole ||
  choices.made.bodyToUnderarm ||
  choices.made.neckWidth ||
  frontIsMade(choices);

/** Whether the sleeve is finished. */
export const sleeveIsMade = ({ made }: Choices): boolean =>
  made.sleeve || made.sleeveTop || made.cap || made.sleeveRaglan || made.cuff;
