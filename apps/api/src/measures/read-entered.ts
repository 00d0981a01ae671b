import type { Measured, Size } from './measured.ts';
import { LENGTH, LENGTH_DIFFERENCE } from './quantity-kind.ts';
import { readMeasured } from './read-measured.ts';

/** A length in mm with its uncertainty, where it was entered. */
export function lengthOf(measured: Measured | null | undefined): Size | null {
  return measured == null ? null : readMeasured(measured, LENGTH);
}

export function mmOf(measured: Measured | null | undefined): number | null {
  return lengthOf(measured)?.size ?? null;
}

/** A difference of lengths in mm, where it was entered. */
export function differenceOf(measured: Measured | null | undefined): number | null {
  return measured == null ? null : readMeasured(measured, LENGTH_DIFFERENCE).size;
}
