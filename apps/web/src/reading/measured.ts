import type { Measured, UnitSpelling } from '#measure';
import { empty } from '../notebook/blank.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { namesUnit, read, type Quantity } from './read.ts';

/** A size in a record: the text as it was written, and the unit of a bare number. */
interface Written<U extends UnitSpelling> {
  readonly text: string;
  readonly unit: U;
}

const UNITS = {
  length: { cm: 'cm', in: '[in_i]' },
  signed: { cm: 'cm', in: '[in_i]' },
  small: { cm: 'mm', in: '[in_i]' },
  mass: { cm: 'kg', in: '[lb_av]' },
} as const satisfies Readonly<Record<Quantity, Readonly<Record<Tape, UnitSpelling>>>>;
type UnitOf<Q extends Quantity> = (typeof UNITS)[Q][Tape];

/** Null where nothing can be read: it stays in this browser as it was written. */
export function toMeasured<Q extends Quantity>(typed: Typed | undefined, quantity: Q): Written<UnitOf<Q>> | null {
  if (typed === undefined || read(typed, quantity).is !== 'value') return null;
  return { text: typed.text.trim(), unit: UNITS[quantity][typed.tape] as UnitOf<Q> };
}

/** The same, and null for nothing at all too. */
export function toSize<Q extends Quantity>(typed: Typed | undefined, quantity: Q): Written<UnitOf<Q>> | null {
  const reading = read(typed, quantity);
  return reading.is === 'value' && reading.value === 0 ? null : toMeasured(typed, quantity);
}

const INCHES: readonly unknown[] = ['[in_i]', 'in', '[lb_av]', 'lb'] satisfies UnitSpelling[];

/** Back to what is written on the page: a bare number only where the page reads it in the unit it was given in. */
export function fromMeasured(measured: Measured | null | undefined, quantity: Quantity): Typed {
  const tape: Tape = INCHES.includes(measured?.unit) ? 'in' : 'cm';
  const text = measured?.text ?? (measured?.value == null ? null : String(measured.value));
  if (text === null) return empty(tape);
  const unit = plainUnit(measured?.unit ?? '');
  const understood = unit === '' || namesUnit(text) || unit === plainUnit(UNITS[quantity][tape]);
  return { text: understood ? text : `${text} ${unit}`, tape };
}

const plainUnit = (unit: string): string => (unit === '[in_i]' ? 'in' : unit === '[lb_av]' ? 'lb' : unit);
