import { MM_PER_UNIT, type LengthUnit } from './length-unit.ts';
import { GRAMS_PER_UNIT, type MassUnit } from './mass-unit.ts';

/** A unit that a maker may write, and how it goes with others. `U` is the kind of unit the answer is shown in. */
export interface WrittenUnit<U extends string> {
  /** Lower-case, as `tidyText` leaves them; the first is the one to write. */
  readonly spellings: readonly string[];
  /** Millimetres or grams in one. */
  readonly size: number;
  /** The unit it is shown in again. */
  readonly shownIn: U;
  /** The smaller unit that may follow (5 ft 4 in), and what it looks like when its own name is left out (5'4, 1m64). */
  readonly then?: { readonly unit: string; readonly unnamed: RegExp };
}

const upToTwoDigits = /^\d{1,2}(?: \d\/\d{1,2})?$/;

export const WRITTEN_LENGTHS: Readonly<Record<string, WrittenUnit<LengthUnit>>> = {
  mm: {
    spellings: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
    size: MM_PER_UNIT.mm,
    shownIn: 'mm',
  },
  cm: {
    spellings: ['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
    size: MM_PER_UNIT.cm,
    shownIn: 'cm',
    then: { unit: 'mm', unnamed: /^\d$/ },
  },
  m: {
    spellings: ['m', 'metre', 'metres', 'meter', 'meters'],
    size: 1000,
    shownIn: 'cm',
    then: { unit: 'cm', unnamed: /^\d{2}$/ },
  },
  in: {
    spellings: ['in', 'ins', 'inch', 'inches', '"', '[in_i]'],
    size: MM_PER_UNIT['[in_i]'],
    shownIn: '[in_i]',
  },
  ft: {
    spellings: ['ft', 'foot', 'feet', "'", '[ft_i]'],
    size: 304.8,
    shownIn: '[in_i]',
    then: { unit: 'in', unnamed: upToTwoDigits },
  },
};

/** The ounce and the stone are parts and multiples of the international avoirdupois pound: 1/16 and 14. */
export const WRITTEN_MASSES: Readonly<Record<string, WrittenUnit<MassUnit>>> = {
  g: { spellings: ['g', 'gr', 'gram', 'grams', 'gramme', 'grammes'], size: GRAMS_PER_UNIT.g, shownIn: 'g' },
  kg: {
    spellings: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
    size: GRAMS_PER_UNIT.kg,
    shownIn: 'kg',
  },
  oz: {
    spellings: ['oz', 'ounce', 'ounces', '[oz_av]'],
    size: GRAMS_PER_UNIT['[lb_av]'] / 16,
    shownIn: '[lb_av]',
  },
  lb: {
    spellings: ['lb', 'lbs', 'pound', 'pounds', '[lb_av]'],
    size: GRAMS_PER_UNIT['[lb_av]'],
    shownIn: '[lb_av]',
    then: { unit: 'oz', unnamed: upToTwoDigits },
  },
  st: {
    spellings: ['st', 'stone', 'stones', '[stone_av]'],
    size: 14 * GRAMS_PER_UNIT['[lb_av]'],
    shownIn: '[lb_av]',
    then: { unit: 'lb', unnamed: upToTwoDigits },
  },
};
