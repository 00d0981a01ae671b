import type { OutsideLimits } from '#garment';
import type { UnreadText, UnusableNumber } from '#measure';
import type { Catalogue } from '../catalogue.ts';
import type { ErrorCodes } from '../error-codes.ts';
import { countsErrors } from './counts-errors.ts';
import { HOW_TO_MEASURE_THICKNESS } from './fabric.ts';
import { fitErrors } from './fit-errors.ts';
import { plannerErrors } from './planners.ts';
import { QUANTITY_WORDS, quantityFault } from './quantity-fault.ts';
import { sheetErrors } from './sheet-errors.ts';

const unread = ({ kind, text, fault }: UnreadText): string =>
  `“${text}” was read as a ${kind}, but ${quantityFault(fault, kind)}.`;

function unusable({ kind, value, unit, fault }: UnusableNumber): string {
  if (fault === 'negative') return `${value} ${unit} is not a ${kind}; a ${kind} is not less than nothing.`;
  return `${value} ${unit} is not a ${kind} up to ${QUANTITY_WORDS[kind].largest}; check the number and its unit.`;
}

const outOfRange = (params: UnreadText | UnusableNumber): string =>
  'text' in params ? unread(params) : unusable(params);

const outsideLimits = ({ valueMm, smallestMm, largestMm }: OutsideLimits): string =>
  `Read ${valueMm} mm; it lies between ${smallestMm} and ${largestMm} mm.`;

const thereAre = (known: readonly string[]): string => `There are: ${known.join(', ')}.`;

/** What is wrong with an input, and what would be right. */
export const errors: Catalogue<ErrorCodes> = {
  ...fitErrors,
  ...sheetErrors,
  ...countsErrors,
  ...plannerErrors,

  'length-unreadable': unread,
  'length-ambiguous': unread,
  'length-unit-missing': unread,
  'length-out-of-range': outOfRange,
  'mass-unreadable': unread,
  'mass-ambiguous': unread,
  'mass-unit-missing': unread,
  'mass-out-of-range': outOfRange,
  'unit-unknown': ({ kind, text }) => `“${text}” is not a unit of ${kind} here. Use ${QUANTITY_WORDS[kind].units}.`,
  'measured-not': ({ kind }) => `is missing: ${QUANTITY_WORDS[kind].howToGive}`,
  'unit-missing': ({ kind }) => `is missing: ${QUANTITY_WORDS[kind].howToGive}`,
  'step-invalid': ({ step }) => `A step of ${step} cannot be rounded to; it is above 0.`,
  'chance-out-of-range': ({ chance }) => `A chance lies between 0 and 1; ${chance} does not.`,
  'uncertainty-invalid': ({ name, u }) => `The uncertainty of ${name} is 0 or more, not ${u}.`,
  'division-by-zero': () => 'A value cannot be divided by 0.',
  'root-not-differentiable': ({ value }) => `The root of ${value} has no slope to carry its uncertainty.`,

  'unknown-term': ({ name, known }) =>
    `Evidence rests on ${name}, of which nothing is known; known: ${known.join(', ')}.`,
  'unknown-dimension': ({ of, name, known }) =>
    of === 'body-model'
      ? `The body model has no ${name}.`
      : `There is no ${of} dimension "${name}". ${thereAre(known)}`,
  'unknown-how': ({ name, how, known }) => `${name}: there is no way of measuring "${how}". ${thereAre(known)}`,
  'measured-twice': (params) =>
    'name' in params ? `${params.name} is given twice; keep one of them.` : 'give value or text, not both',
  'measure-out-of-range': (params) => {
    if ('valueMm' in params) return outsideLimits(params);
    const { name, figure, value, smallest, largest, unit } = params;
    const whose = figure === 'unsaid' ? 'an adult’s' : `a ${figure}’s`;
    return `${name}: read ${value} ${unit}; ${whose} lies between ${smallest} and ${largest} ${unit}.`;
  },
  'uncertainty-out-of-range': (params) => {
    if ('valueMm' in params) return outsideLimits(params);
    const { name, u, value, unit } = params;
    return `${name}: read an uncertainty of ${u} ${unit}; it is above 0 and at most half of ${value} ${unit}.`;
  },

  'unknown-figure': ({ figure, known }) => `There is no figure "${figure}". ${thereAre(known)}`,
  'age-out-of-range': ({ figure, ageYears, youngest, oldest }) => {
    const instead = ageYears < youngest && youngest > 0 ? ' For a younger body say child or baby.' : '';
    return `Read an age of ${ageYears} years; for "${figure}" it lies between ${youngest} and ${oldest}.${instead}`;
  },
  'not-a-measure': ({ name, value, u }) =>
    `${name}: read ${value} ± ${u}; a measure is above 0, its uncertainty not below 0.`,
  'singular-covariance': () => 'These values cannot be told apart: their covariance is singular.',
  'unknown-size-table': ({ id, known }) => `There is no size table "${id}". ${thereAre(known)}`,
  'unknown-size': ({ table, size, known }) => `${table} has no size "${size}". It has: ${known.join(', ')}.`,

  'unknown-construction': ({ construction, known }) => `There is no construction "${construction}". ${thereAre(known)}`,
  'thickness-out-of-range': outsideLimits,
  'sleeve-from-misplaced': ({ name }) => `Only sleeve-length is measured from somewhere; ${name} is not.`,

  'fabric-out-of-range': ({ value, smallest, largest, unit }) => {
    const of = unit === null ? '' : ` ${unit}`;
    return `Read ${value}${of}; it lies between ${smallest} and ${largest}${of}.`;
  },
  'weight-category-unknown': ({ category }) =>
    `Read a yarn weight of ${category}; it is a whole number from 0 (lace) to 7 (jumbo).`,
  'stitch-of-other-craft': ({ stitch, craft }) =>
    `Read ${stitch} in ${craft}; stockinette is knit, and single-crochet is crochet.`,
  'thickness-unknown': ({ fibreMissing }) => {
    const fibre = fibreMissing ? ' The metres per 100 g are there, but not the fibre.' : '';
    return `How thick the fabric is cannot be told.${fibre} Give its thickness, or the yarn’s wraps per inch, its metres per 100 g with the fibre, or its weight category, 0 to 7. ${HOW_TO_MEASURE_THICKNESS}`;
  },
};
