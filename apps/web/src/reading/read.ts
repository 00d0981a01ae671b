import { DomainError, parseLength, parseLengthDifference, parseMass, type LengthUnit, type MassUnit } from '#measure';
import type { Tape, Typed } from '../notebook/typed.ts';

/** What a written text was understood as: a value in mm (or g), or why there is none. */
export type Reading =
  | { readonly is: 'empty' }
  | { readonly is: 'value'; readonly value: number }
  | { readonly is: 'wrong'; readonly why: string };

/** What a field asks for; says the unit of a bare number. */
export const QUANTITIES = ['length', 'small', 'signed', 'mass'] as const;
export type Quantity = (typeof QUANTITIES)[number];

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
    return { is: 'value', value: valueOf(text, quantity, typed.tape) };
  } catch (error) {
    if (error instanceof DomainError) return { is: 'wrong', why: error.message };
    throw error;
  }
}

function valueOf(text: string, quantity: Quantity, tape: Tape): number {
  switch (quantity) {
    case 'mass':
      return parseMass(text, { defaultUnit: MASS[tape] }).grams;
    case 'small':
      return parseLength(text, { defaultUnit: SMALL[tape] }).mm;
    case 'signed':
      return parseLengthDifference(text, { defaultUnit: LENGTH[tape] }).mm;
    case 'length':
      return parseLength(text, { defaultUnit: LENGTH[tape] }).mm;
  }
}

/** The value in mm (or g), or null where there is none to reckon with. */
export function valueIn(typed: Typed | undefined, quantity: Quantity = 'length'): number | null {
  const reading = read(typed, quantity);
  return reading.is === 'value' ? reading.value : null;
}

/** A plain number as people write it, comma or point; null where it is none or not above zero. */
export function plainNumber(text: string): number | null {
  const tidy = text.trim().replace(',', '.');
  if (!/^\d+(\.\d*)?$/.test(tidy)) return null;
  const value = Number(tidy);
  return value > 0 && value < 1e6 ? value : null;
}
