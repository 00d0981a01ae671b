import type { Measured } from './measured.ts';
import { MeasuredField, type Limits, type Reading } from './measured-field.ts';
import { LENGTH, LENGTH_DIFFERENCE, type QuantityKind } from './quantity-kind.ts';

/** The four fields of a length within limits, as a class to name or to extend. */
function lengthWithin(limits: Limits, kind: QuantityKind = LENGTH) {
  const reading = (): Reading => ({ kind, limits });
  class Length implements Measured {
    @MeasuredField('value', kind.units, reading)
    value?: number | null;
    @MeasuredField('unit', kind.units, reading)
    unit?: string | null;
    @MeasuredField('text', kind.units, reading)
    text?: string | null;
    @MeasuredField('u', kind.units, reading)
    u?: number | null;
  }
  return Length;
}

/** Thickness of one layer of fabric. */
export class ThicknessDto extends lengthWithin({
  min: 0.05,
  max: 50,
  words: 'the thickness of one layer: 0.05 to 50 mm',
}) {}

/** A length on a garment, finished: a band, a rib, a neck. */
export class GarmentLengthDto extends lengthWithin({ min: 0, max: 3000, words: 'from 0 to 3 m' }) {}

/** A difference in girth; less than nothing where the garment is the smaller. */
export class GirthDifferenceDto extends lengthWithin(
  { min: -1000, max: 2000, words: 'from -1 m to 2 m' },
  LENGTH_DIFFERENCE,
) {}
