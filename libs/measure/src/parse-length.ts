import { LENGTH } from './length-kind.ts';
import type { LengthUnit } from './length-unit.ts';
import { parseQuantity } from './parse-quantity.ts';
import { sizeFrom, unitCode } from './written-unit.ts';

/** A length as a maker typed it: in mm, with the unit to show it in again and the text untouched. */
export interface ParsedLength {
  readonly mm: number;
  readonly unit: LengthUnit;
  readonly text: string;
}

/** The unit of a number typed without one. */
export interface LengthOptions {
  readonly defaultUnit?: LengthUnit | undefined;
}

/**
 * Reads a length from 0 to 10 m: `17 1/2`, `17½ in`, `17.5"`, `44,5 cm`, `1.2 m`, `5'4"`, `5 ft 4 1/2 in`, `1m64`.
 * Metres are shown again in cm, feet in inches.
 *
 * @throws DomainError `length-unreadable`, `length-ambiguous`, `length-unit-missing` or `length-out-of-range`; nothing else, whatever the text.
 */
export function parseLength(text: string, options: LengthOptions = {}): ParsedLength {
  const { size, unit } = parseQuantity(text, LENGTH, options.defaultUnit);
  return { mm: size, unit, text };
}

const SIGN = /^\s*([+\-\u2010-\u2015\u2212])/;

/** Reads a difference of lengths, such as ease, −10 to 10 m: a length with or without a sign, `-2 in`. Throws as `parseLength` does. */
export function parseLengthDifference(text: string, options: LengthOptions = {}): ParsedLength {
  const [signed = '', sign = '+'] = SIGN.exec(text) ?? [];
  const { mm, unit } = parseLength(text.slice(signed.length), options);
  return { mm: sign === '+' || mm === 0 ? mm : -mm, unit, text };
}

/** The unit that a text names: `mm`, `cm`, `[in_i]`, or a spelling of one, such as `in`. @throws DomainError `unit-unknown` */
export function unitOf(text: string): LengthUnit {
  return unitCode(text, LENGTH);
}

/**
 * A number and the name of its unit, in mm. The sign is kept, since a difference of lengths can be negative.
 *
 * @throws DomainError `unit-unknown`; `length-out-of-range` when it is not a number, or beyond 10 m either way.
 */
export function lengthFrom(value: number, unit: string): number {
  return sizeFrom(value, unit, LENGTH);
}
