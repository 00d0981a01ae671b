import { DomainError } from './domain-error.ts';
import { GRAMS_PER_UNIT, type MassUnit } from './mass-unit.ts';
import { parseQuantity, type Kind } from './parse-quantity.ts';
import { WRITTEN_MASSES } from './unit-table.ts';

/** A mass as a maker typed it: in grams, with the unit to show it in again and the text untouched. */
export interface ParsedMass {
  readonly grams: number;
  readonly unit: MassUnit;
  readonly text: string;
}

/** More than anybody weighs. */
export const MAX_MASS_GRAMS = 1_000_000;

const MASS: Kind<MassUnit> = {
  what: 'mass',
  units: WRITTEN_MASSES,
  max: MAX_MASS_GRAMS,
  maxInWords: '1000 kg',
  examples: '62 kg, 600 g, 140 lb or 11 st 4 lb',
};

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
  const name = text.trim().toLowerCase();
  const unit = Object.values(WRITTEN_MASSES).find(({ spellings }) => spellings.includes(name));
  if (unit !== undefined && unit.size === GRAMS_PER_UNIT[unit.shownIn]) return unit.shownIn;
  throw new DomainError(
    'unit-unknown',
    `“${text.slice(0, 20)}” is not a unit of mass here. Use g, kg or [lb_av] (lb is understood too).`,
  );
}

/**
 * A number and the name of its unit, in grams.
 *
 * @throws DomainError `unit-unknown`; `mass-out-of-range` when it is not a number from 0 to 1000 kg.
 */
export function massFrom(value: number, unit: string): number {
  const grams = value * GRAMS_PER_UNIT[massUnitOf(unit)];
  if (grams >= 0 && grams <= MAX_MASS_GRAMS) return grams;
  throw new DomainError(
    'mass-out-of-range',
    `${value} ${unit} is not a mass from 0 to 1000 kg; check the number and its unit.`,
  );
}
