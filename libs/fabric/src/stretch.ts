import type { Craft, Directions } from './fabric.ts';

/** The share of a stretch, pulled by hand, that a garment may use and still be comfortable and come back (from memory). */
const USABLE_SHARE = 0.5;

/** Usable stretch across of a main fabric that was not measured: the cautious end of what is usual (assumed). */
const USUAL: Readonly<Record<Craft, number>> = { knit: 0.1, crochet: 0.04 };

/** What may be used of a measured stretch, (pulled − at rest)/at rest; fractions. */
export function usableOf(stretch: number): number {
  return USABLE_SHARE * stretch;
}

/** Usable stretch of the main fabric across: of what was measured, else what is usual for the craft. */
export function usableAcross(craft: Craft, stretch: Directions | null): number {
  return stretch === null ? USUAL[craft] : usableOf(stretch.across);
}
