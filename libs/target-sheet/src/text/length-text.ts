import { MM_PER_UNIT, inchesText, roundTo } from '#measure';

/** The unit a maker's tape is in. */
export type MakersUnit = 'cm' | 'in';

/** Marks of the table: a millimetre, an eighth of an inch. */
const CM_STEP = 1;
const EIGHTH = MM_PER_UNIT['[in_i]'] / 8;

/** Millimetres as centimetres to one decimal: `51.4`. */
export const cmText = (mm: number): string => roundTo(mm / MM_PER_UNIT.cm, 0.1).toFixed(1);

/** Millimetres as inches to the nearest ⅛, whole numbers and fractions each in their column: `20 1/4`, ` 9    `. */
export function inchCell(mm: number): string {
  const [first = '', second = ''] = inchesText(mm).split(' ');
  const [whole, fraction] = first.includes('/') ? ['', first] : [first, second];
  return `${whole.padStart(3)} ${fraction.padEnd(3)}`;
}

/** How far a length may be rounded, in marks that lie within, and its own: `50.7 to 52.6`; a dash where none lies within. */
export function rangeText({ value, low, high }: Record<'value' | 'low' | 'high', number>, unit: MakersUnit): string {
  const step = unit === 'cm' ? CM_STEP : EIGHTH;
  const first = Math.ceil(low / step - 1e-6);
  const last = Math.floor(high / step + 1e-6);
  if (first > last) return '–';
  const own = Math.round((unit === 'cm' ? Number(cmText(value)) * MM_PER_UNIT.cm : value) / step);
  return `${tapeText(Math.min(first, own) * step, unit)} to ${tapeText(Math.max(last, own) * step, unit)}`;
}

/** One decimal, in the maker's unit and without its name: for what is compared, where an eighth would hide the difference. */
export const decimalText = (mm: number, unit: MakersUnit): string =>
  unit === 'cm' ? cmText(mm) : roundTo(mm / MM_PER_UNIT['[in_i]'], 0.1).toFixed(1);

/** Millimetres as the maker's tape reads, without the unit's name: `51.4`, `20 1/4`. */
export const tapeText = (mm: number, unit: MakersUnit): string => (unit === 'cm' ? cmText(mm) : inchesText(mm));
