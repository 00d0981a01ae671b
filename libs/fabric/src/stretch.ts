import type { Directions, Fabric } from './fabric.ts';

/** The share of a stretch, pulled by hand, that a garment may use and still be comfortable and come back (from memory). */
const USABLE_SHARE = 0.5;

/** What may be used of a measured stretch, (pulled − at rest)/at rest; fractions. */
export function usableOf(stretch: number): number {
  return USABLE_SHARE * stretch;
}

/** Usable stretch of the main fabric both ways; none where it was not measured. */
export function usableStretch({ stretch }: Fabric): Directions {
  return { across: usableOf(stretch?.across ?? 0), along: usableOf(stretch?.along ?? 0) };
}
