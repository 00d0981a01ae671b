import { DomainError } from './domain-error.ts';
import { MM_PER_UNIT, type LengthUnit } from './length-unit.ts';
import { parseQuantity, type Kind } from './parse-quantity.ts';
import { WRITTEN_LENGTHS } from './unit-table.ts';

/** A length as a maker typed it: in mm, with the unit to show it in again and the text untouched. */
export interface ParsedLength {
  readonly mm: number;
  readonly unit: LengthUnit;
  readonly text: string;
}

/** Longer than anything worn or made here, and than anybody is tall. */
export const MAX_LENGTH_MM = 10_000;

const LENGTH: Kind<LengthUnit> = {
  what: 'length',
  units: WRITTEN_LENGTHS,
  max: MAX_LENGTH_MM,
  maxInWords: '10 m',
  examples: '17 1/2 in, 44.5 cm or 445 mm',
};

/**
 * Reads a length from 0 to 10 m: `17 1/2`, `17½ in`, `17.5"`, `44,5 cm`, `1.2 m`, `5'4"`, `5 ft 4 1/2 in`, `1m64`.
 * A number alone is in `defaultUnit`. Metres are shown again in cm, feet in inches.
 *
 * @throws DomainError `length-unreadable`, `length-ambiguous`, `length-unit-missing` or `length-out-of-range`; nothing else, whatever the text.
 */
export function parseLength(
  text: string,
  options: { readonly defaultUnit?: LengthUnit | undefined } = {},
): ParsedLength {
  const { size, unit } = parseQuantity(text, LENGTH, options.defaultUnit);
  return { mm: size, unit, text };
}

/** The unit that a text names: `mm`, `cm`, `[in_i]`, or a spelling of one, such as `in`. @throws DomainError `unit-unknown` */
export function unitOf(text: string): LengthUnit {
  const name = text.trim().toLowerCase();
  const unit = Object.values(WRITTEN_LENGTHS).find(({ spellings }) => spellings.includes(name));
  if (unit !== undefined && unit.size === MM_PER_UNIT[unit.shownIn]) return unit.shownIn;
  throw new DomainError(
    'unit-unknown',
    `“${text.slice(0, 20)}” is not a unit of length here. Use mm, cm or [in_i] (in is understood too).`,
  );
}

/**
 * A number and the name of its unit, in mm. The sign is kept, since a difference of lengths (ease) can be negative.
 *
 * @throws DomainError `unit-unknown`; `length-out-of-range` when it is not a number, or beyond 10 m either way.
 */
export function lengthFrom(value: number, unit: string): number {
  const mm = value * MM_PER_UNIT[unitOf(unit)];
  if (Math.abs(mm) <= MAX_LENGTH_MM) return mm;
  throw new DomainError(
    'length-out-of-range',
    `${value} ${unit} is not a length up to 10 m; check the number and its unit.`,
  );
}
