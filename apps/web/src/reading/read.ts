import { errorText } from '#advice-text';
import { DomainError, parseLength, parseLengthDifference, parseMass, type LengthUnit, type MassUnit } from '#measure';
import type { say } from '../messages.ts';
import type { Tape, Typed } from '../notebook/typed.ts';

/** What can be wrong with a text, in a word; `why` says it in full. */
type Problem = keyof typeof say.field.wrong;

/** What a written text was understood as: a value in mm (or g) and the tape it was read on, or why there is none. */
type Reading =
  | { readonly is: 'empty' }
  | { readonly is: 'value'; readonly value: number; readonly tape: Tape }
  | { readonly is: 'wrong'; readonly problem: Problem; readonly why: string };

/** What a field asks for; says the unit of a bare number. */
export type Quantity = 'length' | 'small' | 'signed' | 'mass';

const LENGTH: Readonly<Record<Tape, LengthUnit>> = { cm: 'cm', in: '[in_i]' };
const SMALL: Readonly<Record<Tape, LengthUnit>> = { cm: 'mm', in: '[in_i]' };
const MASS: Readonly<Record<Tape, MassUnit>> = { cm: 'kg', in: '[lb_av]' };

/** The unit a bare number is read in, as people write it. */
export function unitOf(quantity: Quantity, tape: Tape): string {
  if (quantity === 'mass') return tape === 'cm' ? 'kg' : 'lb';
  if (quantity === 'small') return tape === 'cm' ? 'mm' : 'in';
  return tape;
}

export function read(typed: Typed | undefined, quantity: Quantity = 'length'): Reading {
  const text = typed?.text.trim() ?? '';
  if (typed === undefined || text === '') return { is: 'empty' };
  try {
    const { value, unit } = parsed(text, quantity, typed.tape);
    return { is: 'value', value, tape: unit === '[in_i]' || unit === '[lb_av]' ? 'in' : 'cm' };
  } catch (error) {
    if (error instanceof DomainError)
      return { is: 'wrong', problem: error.code.replace(/^\w+-/, '') as Problem, why: errorText(error) };
    throw error;
  }
}

function parsed(text: string, quantity: Quantity, tape: Tape): { value: number; unit: LengthUnit | MassUnit } {
  if (quantity === 'mass') {
    const { grams, unit } = parseMass(text, { defaultUnit: MASS[tape] });
    return { value: grams, unit };
  }
  const parse = quantity === 'signed' ? parseLengthDifference : parseLength;
  const { mm, unit } = parse(text, { defaultUnit: (quantity === 'small' ? SMALL : LENGTH)[tape] });
  return { value: mm, unit };
}

/** The value in mm (or g), or null where there is none to reckon with. */
export function valueIn(typed: Typed | undefined, quantity: Quantity = 'length'): number | null {
  const reading = read(typed, quantity);
  return reading.is === 'value' ? reading.value : null;
}

/** A plain number as people write it: 18, 4,5, 4 1/2 or 4½. Null where it is none, and at nothing unless that is a number too. */
export function plainNumber(text: string, least: 'above zero' | 'zero too' = 'above zero'): number | null {
  if (text.trim() === '' || namesUnit(text)) return null;
  try {
    // The digits of every quantity are read alike; nothing hangs on its being a weight.
    const { grams: value } = parseMass(text, { defaultUnit: 'g' });
    return value > 0 || least === 'zero too' ? value : null;
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}

/** Metres in a yard, exactly (international yard and pound agreement of 1959). */
const METRES_PER_YARD = 0.9144;
const RUN = /^(.*?)\s*(?:(yds?|yards?)|m|met(?:re|er)s?)?\.?$/i;

/** How many metres of yarn, written in metres or in yards: 200, 200 m, 220 yd. Null where it is none. */
export function metresOf(text: string): number | null {
  const [, number = '', yards] = RUN.exec(text.trim()) ?? [];
  const run = plainNumber(number, 'zero too');
  return run === null || yards === undefined ? run : run * METRES_PER_YARD;
}

/** True where a text names a unit of its own. */
export const namesUnit = (text: string): boolean => /[\p{L}"'″′]/u.test(text);
