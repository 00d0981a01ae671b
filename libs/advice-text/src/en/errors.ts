import type { UnreadText, UnusableNumber } from '#measure';
import type { ErrorParams } from '../error-params.ts';
import { QUANTITY_WORDS, quantityFault } from './quantity-fault.ts';

const unread = ({ kind, text, fault }: UnreadText): string =>
  `“${text}” was read as a ${kind}, but ${quantityFault(fault, kind)}.`;

function unusable({ kind, value, unit, fault }: UnusableNumber): string {
  if (fault === 'negative') return `${value} ${unit} is not a ${kind}; a ${kind} is not less than nothing.`;
  return `${value} ${unit} is not a ${kind} up to ${QUANTITY_WORDS[kind].largest}; check the number and its unit.`;
}

const outOfRange = (params: UnreadText | UnusableNumber): string =>
  'text' in params ? unread(params) : unusable(params);

/** What is wrong with an input, and what would be right. */
export const errors: { readonly [Code in keyof ErrorParams]: (params: ErrorParams[Code]) => string } = {
  'length-unreadable': unread,
  'length-ambiguous': unread,
  'length-unit-missing': unread,
  'length-out-of-range': outOfRange,
  'mass-unreadable': unread,
  'mass-ambiguous': unread,
  'mass-unit-missing': unread,
  'mass-out-of-range': outOfRange,
  'unit-unknown': ({ kind, text }) => `“${text}” is not a unit of ${kind} here. Use ${QUANTITY_WORDS[kind].units}.`,
  'chance-out-of-range': ({ chance }) => `A chance lies between 0 and 1; ${chance} does not.`,
  'uncertainty-invalid': ({ name, u }) => `The uncertainty of ${name} is 0 or more, not ${u}.`,
  'division-by-zero': () => 'A value cannot be divided by 0.',
  'root-not-differentiable': ({ value }) => `The root of ${value} has no slope to carry its uncertainty.`,
};
