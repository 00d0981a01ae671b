import { formatLength, MM_PER_UNIT, parseLengthDifference } from '#measure';
import type { Tape } from '../notebook/typed.ts';

const numbers = (options: Intl.NumberFormatOptions): Intl.NumberFormat =>
  new Intl.NumberFormat(navigator.language, { useGrouping: false, ...options });

/** One formatter for each number of decimals, made once: making it takes far longer than formatting. */
const NUMBERS = {
  0: numbers({ maximumFractionDigits: 0 }),
  1: numbers({ maximumFractionDigits: 1 }),
  2: numbers({ maximumFractionDigits: 2 }),
  3: numbers({ maximumFractionDigits: 3 }),
};
const PERCENT = numbers({ style: 'percent' });
const TERM = numbers({ minimumFractionDigits: 1, maximumFractionDigits: 2, signDisplay: 'exceptZero' });
const separator: '.' | ',' =
  NUMBERS[1].formatToParts(1.5).find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';

const GLYPHS: Readonly<Record<string, string>> = {
  '1/8': '⅛',
  '1/4': '¼',
  '3/8': '⅜',
  '1/2': '½',
  '5/8': '⅝',
  '3/4': '¾',
  '7/8': '⅞',
};

/** A number with at most this many decimals, in the browser's language. */
export function showNumber(value: number, decimals: keyof typeof NUMBERS = 0): string {
  return NUMBERS[decimals].format(value);
}

export const showPercent = (share: number): string => PERCENT.format(share);

/** A length as on a tape: `17½ in`, `44,5 cm`. */
export function showLength(mm: number, tape: Tape): string {
  if (tape === 'cm') return minus(formatLength(mm, 'cm', { decimalSeparator: separator }));
  return minus(formatLength(mm, '[in_i]').replace(/ ?(\d\/\d)/, (_, fraction: string) => GLYPHS[fraction] ?? fraction));
}

/** A formatted value without its unit, for a place that shows the unit once. */
export const withoutUnit = (shown: string): string => shown.replace(/ \D+$/, '');

/** A small length, such as the thickness of a fabric: `6.5 mm`, `0.26 in`. */
export function showSmall(mm: number, tape: Tape): string {
  return tape === 'cm' ? `${showNumber(mm, 1)} mm` : `${showNumber(mm / MM_PER_UNIT['[in_i]'], 2)} in`;
}

/** A term of a sum, with its sign, and with more decimals than a tape shows. */
export const showExactly = (mm: number, tape: Tape): string =>
  tape === 'cm' ? `${TERM.format(mm / MM_PER_UNIT.cm)} cm` : `${TERM.format(mm / MM_PER_UNIT['[in_i]'])} in`;

/** A difference, with its sign. */
export const showSigned = (mm: number, tape: Tape): string => (mm > 0 ? '+' : '') + showLength(mm, tape);

/** How much longer the second of two lengths is: the difference of the two as they are shown. */
export const showDifference = (one: number, other: number, tape: Tape): string =>
  showSigned(asShown(other, tape) - asShown(one, tape), tape);

const asShown = (mm: number, tape: Tape): number =>
  parseLengthDifference(formatLength(mm, tape === 'cm' ? 'cm' : '[in_i]')).mm;

const minus = (text: string): string => text.replace(/^-/, '−');
