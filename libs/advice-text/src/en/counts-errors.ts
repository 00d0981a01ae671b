import type { CountsErrors } from '#counts';
import type { Catalogue } from '../catalogue.ts';

const rounded = (value: number): string =>
  Number.isFinite(value) ? String(Number(value.toPrecision(3))) : 'no number';
const plusText = (plus: number): string => (plus === 0 ? '' : ` plus ${plus}`);

/** What is wrong with what a sheet is counted at. */
export const countsErrors: Catalogue<CountsErrors> = {
  'gauge-out-of-range': ({ of, value, smallest, largest }) =>
    `That is ${rounded(value)} ${of} to 10 cm; a gauge has between ${smallest} and ${largest}. Check the number and the length it is over.`,
  'multiple-unusable': ({ multiple, plus, largest }) =>
    `A multiple of ${multiple}${plusText(plus)} cannot be counted in; give whole numbers, the first from 1 to ${largest}.`,
  'multiple-larger-than-piece': ({ multiple, plus, piece, name, stitches }) =>
    `A multiple of ${multiple}${plusText(plus)} is more than the ${piece}’s ${name} has: about ${stitches} stitches. Choose a smaller repeat.`,
  'counts-close-nowhere': ({ piece, name }) =>
    `No whole numbers of stitches or rows meet all that is asked at the ${piece}’s ${name}. Leave out a multiple, or odd, even or even rows.`,
  'nothing-to-count': () => 'No piece of this sheet has a length yet, so there is nothing to count.',
};
