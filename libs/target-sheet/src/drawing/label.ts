import { inchesText, roundTo } from '#measure';
import type { DimensionName } from '#fit';

/** Size of the words on a drawing, in its own units (CSS pixels at full size). */
export const TEXT_SIZE = 12;
/** Mean width of a character of a plain sans-serif, as a share of its size; a little wide, to be safe. */
const CHARACTER = 0.56;

export const textWidth = (text: string, size = TEXT_SIZE): number => [...text].length * CHARACTER * size;

/** The short words for a drawing, where the place says the rest. */
const SHORT: Partial<Record<DimensionName, string>> = {
  'hem-width': 'hem',
  'cross-back-width': 'cross back',
  'centre-back-length': 'centre back',
  'body-to-underarm': 'to underarm',
  'armhole-depth': 'armhole',
  'shoulder-width': 'shoulder',
  'neck-width': 'neck',
  'opening-length': 'opens',
  'front-neck-depth': 'neck',
  'back-neck-depth': 'neck',
  'sleeve-top-width': 'top',
  'sleeve-length': 'whole sleeve',
  'underarm-seam': 'to underarm',
  'cuff-width': 'cuff',
  'above-rib-width': 'above rib',
  'cap-height': 'cap',
  'cap-top-width': 'top',
  'raglan-depth': 'raglan',
  'sleeve-raglan-depth': 'raglan',
  'rib-depth': 'rib',
  'band-depth': 'deep',
};

const EIGHTHS: Readonly<Record<string, string>> = {
  '1/8': '⅛',
  '1/4': '¼',
  '3/8': '⅜',
  '1/2': '½',
  '5/8': '⅝',
  '3/4': '¾',
  '7/8': '⅞',
};

/** A length of so many mm as a drawing writes it: centimetres to one decimal (`51.1`) or inches to the nearest ⅛ (`20⅛`). */
export function lengthLabel(mm: number, unit: 'cm' | 'in'): string {
  if (unit === 'cm') return roundTo(mm / 10, 0.1).toFixed(1);
  return inchesText(mm)
    .split(' ')
    .map((word) => EIGHTHS[word] ?? word)
    .join('');
}

/** What fits along a line so long: the short words with the number, the number alone, or nothing. */
export function fittingLabel(name: DimensionName, length: string, room: number): string | null {
  const words = `${SHORT[name] ?? name.replaceAll('-', ' ')} ${length}`;
  return [words, length].find((label) => textWidth(label) <= room) ?? null;
}
