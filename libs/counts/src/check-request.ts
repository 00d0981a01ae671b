import { countsError } from './counts-errors.ts';
import { COUNTED_FABRICS, type CountsRequest, type Gauge } from './counts-request.ts';

/** Stitches or rows in 100 mm: from a blanket in arm-thick roving to the finest machine knitting (assumed). */
export const GAUGE_LIMITS = { smallest: 0.5, largest: 250 } as const;
/** The widest repeat that is taken, stitches (assumed). */
export const LARGEST_MULTIPLE = 500;

/**
 * Checks what a sheet is to be counted at. `hundred`: 100 mm in the sheet's unit.
 *
 * @throws DomainError `gauge-out-of-range`, `multiple-unusable`, with a pointer to the field
 */
export function checkRequest({ gauge, multiple }: CountsRequest, hundred: number): void {
  for (const fabric of COUNTED_FABRICS) {
    const given = gauge[fabric];
    if (given !== null) checkGauge(given, hundred, `/gauge/${fabric}`);
    const repeat = multiple[fabric];
    if (repeat !== null) checkMultiple(repeat, `/multiple/${fabric}`);
  }
}

function checkGauge(gauge: Gauge, hundred: number, pointer: string): void {
  for (const of of ['stitches', 'rows'] as const) {
    const value = (gauge[of] / gauge.over) * hundred;
    const { smallest, largest } = GAUGE_LIMITS;
    if (!(value >= smallest && value <= largest))
      throw countsError('gauge-out-of-range', { of, value, smallest, largest }, `${pointer}/${of}`);
  }
}

function checkMultiple([multiple, plus]: readonly [number, number], pointer: string): void {
  const whole = Number.isInteger(multiple) && Number.isInteger(plus);
  if (whole && multiple >= 1 && multiple <= LARGEST_MULTIPLE && plus >= 0 && plus < LARGEST_MULTIPLE) return;
  throw countsError('multiple-unusable', { multiple, plus, largest: LARGEST_MULTIPLE }, pointer);
}
