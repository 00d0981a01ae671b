import { lengthFrom, massFrom, massUnitOf, parseLength, parseLengthDifference, parseMass, unitOf } from '#measure';

/** How a kind of quantity is read from what a maker gives. */
export interface QuantityKind {
  /** Spellings of units that are taken. */
  readonly units: readonly string[];
  readonly howTo: string;
  /** A text in mm or g, and the unit it was in; a number alone is in `unit`. @throws DomainError */
  parse(text: string, unit: string | undefined): { readonly size: number; readonly unit: string };
  /** A number in mm or g. @throws DomainError */
  from(value: number, unit: string): number;
}

const lengthUnits = ['mm', 'cm', '[in_i]', 'in'];
const lengthHowTo = 'give value and unit (mm, cm or in), or a text such as “17 1/2 in”';

export const LENGTH: QuantityKind = {
  units: lengthUnits,
  howTo: lengthHowTo,
  parse(text, unit) {
    const parsed = parseLength(text, { defaultUnit: unit === undefined ? undefined : unitOf(unit) });
    return { size: parsed.mm, unit: parsed.unit };
  },
  from: lengthFrom,
};

/** A length that may be negative: ease. */
export const LENGTH_DIFFERENCE: QuantityKind = {
  units: lengthUnits,
  howTo: lengthHowTo,
  parse(text, unit) {
    const parsed = parseLengthDifference(text, { defaultUnit: unit === undefined ? undefined : unitOf(unit) });
    return { size: parsed.mm, unit: parsed.unit };
  },
  from: lengthFrom,
};

export const MASS: QuantityKind = {
  units: ['kg', 'g', '[lb_av]', 'lb'],
  howTo: 'give value and unit (kg, g or lb), or a text such as “62 kg”',
  parse(text, unit) {
    const parsed = parseMass(text, { defaultUnit: unit === undefined ? undefined : massUnitOf(unit) });
    return { size: parsed.grams, unit: parsed.unit };
  },
  from: massFrom,
};
