import { lengthFrom, parseLength, parseLengthDifference, unitOf } from './parse-length.ts';
import type { QuantityKind } from './measure-errors.ts';
import { massFrom, massUnitOf, parseMass } from './parse-mass.ts';

/** Spellings of units that a record may hold: UCUM's codes, and `in` and `lb` beside them. */
const LENGTH_SPELLINGS = ['mm', 'cm', '[in_i]', 'in'] as const;
const MASS_SPELLINGS = ['kg', 'g', '[lb_av]', 'lb'] as const;

/** How one kind of quantity is read from what a maker gives. */
export interface QuantityReader {
  readonly units: readonly string[];
  readonly kind: QuantityKind;
  /** A text in mm or g, and the unit it was in; a number alone is in `unit`. @throws DomainError */
  parse(text: string, unit: string | undefined): { readonly size: number; readonly unit: string };
  /** A number in mm or g. @throws DomainError */
  from(value: number, unit: string): number;
}

function lengthsReadBy(read: typeof parseLength) {
  return {
    units: LENGTH_SPELLINGS,
    kind: 'length',
    parse(text: string, unit: string | undefined) {
      const { mm, unit: found } = read(text, { defaultUnit: unit === undefined ? undefined : unitOf(unit) });
      return { size: mm, unit: found };
    },
    from: lengthFrom,
  } as const;
}

/** The kinds of quantity in a record. A `difference` is a length that may be negative: ease. */
export const QUANTITIES = {
  length: lengthsReadBy(parseLength),
  difference: lengthsReadBy(parseLengthDifference),
  mass: {
    units: MASS_SPELLINGS,
    kind: 'mass',
    parse(text: string, unit: string | undefined) {
      const { grams, unit: found } = parseMass(text, {
        defaultUnit: unit === undefined ? undefined : massUnitOf(unit),
      });
      return { size: grams, unit: found };
    },
    from: massFrom,
  },
} as const satisfies Readonly<Record<string, QuantityReader>>;
export type QuantityName = keyof typeof QUANTITIES;

/** How the unit of such a quantity may be spelt in a record. */
export type UnitSpelling<Q extends QuantityName = QuantityName> = (typeof QUANTITIES)[Q]['units'][number];
