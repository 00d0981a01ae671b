import { formatLength, MM_PER_UNIT } from '#measure';
import type { Tape } from '../notebook/typed.ts';

const NUMBERS = new Intl.NumberFormat(navigator.language);
const separator: '.' | ',' =
  NUMBERS.formatToParts(1.5).find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';

const GLYPHS: Readonly<Record<string, string>> = {
  '1/8': '⅛',
  '1/4': '¼',
  '3/8': '⅜',
  '1/2': '½',
  '5/8': '⅝',
  '3/4': '¾',
  '7/8': '⅞',
};

/** A number with at most so many decimals, in the browser's way of writing. */
export function showNumber(value: number, decimals = 0): string {
  return value.toLocaleString(navigator.language, { maximumFractionDigits: decimals, useGrouping: false });
}

export function showPercent(share: number): string {
  return share.toLocaleString(navigator.language, { style: 'percent' });
}

/** A length as a tape reads: `17½ in`, `44,5 cm`. */
export function showLength(mm: number, tape: Tape): string {
  if (tape === 'cm') return minus(formatLength(mm, 'cm', { decimalSeparator: separator }));
  return minus(formatLength(mm, '[in_i]').replace(/ ?(\d\/\d)/, (_, fraction: string) => GLYPHS[fraction] ?? fraction));
}

/** A length without its unit, for a drawing whose unit is said once. */
export const showBare = (mm: number, tape: Tape): string => showLength(mm, tape).replace(/ \D+$/, '');

/** A small length, such as the thickness of a fabric: `6.5 mm`, `0.26 in`. */
export function showSmall(mm: number, tape: Tape): string {
  return tape === 'cm' ? `${showNumber(mm, 1)} mm` : `${showNumber(mm / MM_PER_UNIT['[in_i]'], 2)} in`;
}

/** A difference, with its sign. */
export const showSigned = (mm: number, tape: Tape): string => (mm > 0 ? '+' : '') + showLength(mm, tape);

const minus = (text: string): string => text.replace(/^-/, '−');
