import type { Measured } from './measured.ts';
import { QUANTITIES, type QuantityName } from './quantity-readers.ts';

/** Which sizes are believed, in mm or g, both ends included, and how that is put: "from 1 mm to 3 m". */
export interface Limits {
  readonly min: number;
  readonly max: number;
  readonly words: string;
}

interface Reading {
  readonly quantity: QuantityName;
  readonly limits: Limits;
}

/** How the four fields value, unit, text and u of a record are read as one size. */
export interface MeasuredSchema extends Reading {
  /** Another reading of records in which `field` has this value. */
  readonly instead?: Reading & { readonly field: string; readonly is: string };
  /** Fields of which one may be given in place of a size. */
  readonly orGiven?: readonly string[];
}

/** How this record is read; null where it gives no size. */
export function readingOf(record: Measured, { quantity, limits, instead, orGiven }: MeasuredSchema): Reading | null {
  const fields = record as Readonly<Record<string, unknown>>;
  if (orGiven?.some((field) => fields[field] != null) && record.value == null && record.text == null) return null;
  return instead !== undefined && fields[instead.field] === instead.is ? instead : { quantity, limits };
}

/** Every spelling of a unit that such a record may have. */
export const unitsOf = ({ quantity, instead }: MeasuredSchema): readonly string[] => [
  ...QUANTITIES[quantity].units,
  ...(instead === undefined ? [] : QUANTITIES[instead.quantity].units),
];
