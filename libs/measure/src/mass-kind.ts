import { GRAMS_PER_UNIT, type MassUnit } from './mass-unit.ts';
import type { Kind } from './written-unit.ts';

/** More than anybody weighs. */
export const MAX_MASS_GRAMS = 1_000_000;

const POUND = GRAMS_PER_UNIT['[lb_av]'];

/** The ounce is a sixteenth of the international avoirdupois pound, the stone fourteen of it, exactly. */
export const MASS: Kind<MassUnit> = {
  kind: 'mass',
  written: {
    g: { spellings: ['g', 'gr', 'gram', 'grams', 'gramme', 'grammes'], size: 1, shownIn: 'g' },
    kg: {
      spellings: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
      size: 1000,
      shownIn: 'kg',
    },
    oz: { spellings: ['oz', 'ounce', 'ounces', '[oz_av]'], size: POUND / 16, shownIn: '[lb_av]' },
    lb: {
      spellings: ['lb', 'lbs', 'pound', 'pounds', '[lb_av]'],
      size: POUND,
      shownIn: '[lb_av]',
      then: { unit: 'oz', count: 16, unnamed: /^\d{1,2}$/ },
    },
    st: {
      spellings: ['st', 'stone', 'stones', '[stone_av]'],
      size: 14 * POUND,
      shownIn: '[lb_av]',
      then: { unit: 'lb', count: 14, unnamed: /^\d{1,2}$/ },
    },
  },
  sizes: GRAMS_PER_UNIT,
  max: MAX_MASS_GRAMS,
};
