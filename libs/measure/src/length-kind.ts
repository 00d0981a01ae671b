import { MM_PER_UNIT, type LengthUnit } from './length-unit.ts';
import type { Kind } from './written-unit.ts';

/** Longer than anything worn or made here, and than anybody is tall. */
export const MAX_LENGTH_MM = 10_000;

/** The inch is 25.4 mm and the foot 12 inches, exactly (international yard and pound agreement of 1959). */
export const LENGTH: Kind<LengthUnit> = {
  kind: 'length',
  written: {
    mm: { spellings: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'], size: 1, shownIn: 'mm' },
    cm: {
      spellings: ['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
      size: 10,
      shownIn: 'cm',
      then: { unit: 'mm', count: 10, unnamed: /^\d$/ },
    },
    m: {
      spellings: ['m', 'metre', 'metres', 'meter', 'meters'],
      size: 1000,
      shownIn: 'cm',
      then: { unit: 'cm', count: 100, unnamed: /^\d{2}$/ },
    },
    in: { spellings: ['in', 'ins', 'inch', 'inches', '"', '[in_i]'], size: 25.4, shownIn: '[in_i]' },
    ft: {
      spellings: ['ft', 'foot', 'feet', "'", '[ft_i]'],
      size: 304.8,
      shownIn: '[in_i]',
      then: { unit: 'in', count: 12, unnamed: /^\d{1,2}(?: \d{1,2}\/\d{1,2})?$/ },
    },
  },
  sizes: MM_PER_UNIT,
  max: MAX_LENGTH_MM,
};
