/** A length as it is wanted, and how far it may be off. */
export interface Wanted {
  readonly length: number;
  readonly low: number;
  readonly high: number;
  readonly pitch: number;
}

/** So much worse is a length outside its range than any inside it (assumed). */
const OUTSIDE = 1e4;

/** Whether a length lies between its ends, rounding of the arithmetic aside. */
export const isWithin = (length: number, { low, high, pitch }: Wanted): boolean =>
  length >= low - 1e-6 * pitch && length <= high + 1e-6 * pitch;

/** So much more counts what a length is off beyond half a stitch: another count was nearer (assumed). */
const BEYOND_HALF = 4;

/**
 * How bad it is that a length came out otherwise: the square of the deviation over the room there is on that side, more where
 * another count was nearer, and most outside the range.
 */
export function deviationCost(length: number, wanted: Wanted): number {
  const { low, high, pitch } = wanted;
  const off = length - wanted.length;
  // A quarter of a stitch is the least room, so that a range without room still prefers the nearest count (assumed).
  const room = Math.max(Math.min(off > 0 ? high - wanted.length : wanted.length - low, 4 * pitch), pitch / 4);
  const beyond = Math.max(0, (2 * Math.abs(off)) / pitch - 1);
  const cost = (off / room) ** 2 + BEYOND_HALF * beyond ** 2;
  if (isWithin(length, wanted)) return cost;
  const excess = Math.max(low - length, length - high) / pitch;
  return cost + OUTSIDE * (1 + excess ** 2);
}
