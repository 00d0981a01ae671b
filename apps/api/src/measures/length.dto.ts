import type { Measured } from './measured.ts';
import { MeasuredField, type Limits, type Reading } from './measured-field.ts';
import { LENGTH } from './quantity-kind.ts';

/** A class with the fields of a length within limits, to name or to extend. */
function lengthWithin(limits: Limits) {
  const reading = (): Reading => ({ kind: LENGTH, limits });
  class Length implements Measured {
    @MeasuredField('value', LENGTH.units, reading)
    value?: number | null;
    @MeasuredField('unit', LENGTH.units, reading)
    unit?: string | null;
    @MeasuredField('text', LENGTH.units, reading)
    text?: string | null;
  }
  return Length;
}

const THICKNESS: Limits = { min: 0.2, max: 40, words: 'the thickness of one layer: 0.2 to 40 mm' };

/** Thickness of one layer of fabric, with its uncertainty where it is known. */
export class ThicknessDto extends lengthWithin(THICKNESS) implements Measured {
  @MeasuredField('u', LENGTH.units, () => ({ kind: LENGTH, limits: THICKNESS }))
  u?: number | null;
}

/** A chosen length on a garment, finished: a band, a rib, a neck. */
export class ChosenLengthDto extends lengthWithin({ min: 0, max: 3000, words: 'from 0 to 3 m' }) {}
