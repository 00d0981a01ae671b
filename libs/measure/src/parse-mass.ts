import { MASS } from './mass-kind.ts';
import type { MassUnit } from './mass-unit.ts';
import { measureError } from './measure-errors.ts';
import { parseQuantity } from './parse-quantity.ts';
import { sizeFrom, unitCode } from './written-unit.ts';

/** A mass as a maker typed it: in grams, with the unit to show it in again and the text untouched. */
export interface ParsedMass {
  readonly grams: number;
  readonly unit: MassUnit;
  readonly text: string;
}

/**
 * Reads a mass from 0 to 1000 kg: `62 kg`, `600 g`, `140 lb`, `11 st 4 lb`, `3.5 oz`. A number alone is in `defaultUnit`.
 * Stones and ounces are shown again in pounds.
 *
 * @throws DomainError `mass-unreadable`, `mass-ambiguous`, `mass-unit-missing` or `mass-out-of-range`; nothing else, whatever the text.
 */
export function parseMass(text: string, options: { readonly defaultUnit?: MassUnit | undefined } = {}): ParsedMass {
  const { size, unit } = parseQuantity(text, MASS, options.defaultUnit);
  return { grams: size, unit, text };
}

/** The unit that a text names: `g`, `kg`, `[lb_av]`, or a spelling of one, such as `lb`. @throws DomainError `unit-unknown` */
export function massUnitOf(text: string): MassUnit {
  return unitCode(text, MASS);
}

/**
 * A number and the name of its unit, in grams.
 *
 * @throws DomainError `unit-unknown`; `mass-out-of-range` when it is not a number from 0 to 1000 kg.
 */
export function massFrom(value: number, unit: string): number {
  const grams = sizeFrom(value, unit, MASS);
  if (grams >= 0) return grams;
  throw measureError('mass-out-of-range', { kind: 'mass', value, unit, fault: 'negative' });
}
