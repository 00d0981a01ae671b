import { DomainError } from './domain-error.ts';
import { measureError } from './measure-errors.ts';
import type { Measured, Size } from './measured.ts';
import { QUANTITIES, type QuantityName, type QuantityReader } from './quantity-readers.ts';

type Outcome = { readonly quantity: QuantityName } & ({ readonly size: Size } | { readonly error: DomainError });

/** What each record's measured part was read as: one is read once, however many ask. */
const outcomes = new WeakMap<Measured, Outcome>();

/**
 * The size in mm or g. A record is plain data that nobody changes, so each is parsed once and the outcome is kept for as long
 * as the record is.
 *
 * @throws DomainError that says what was read and what would be right; its pointer names value, unit or text
 */
export function readMeasured(measured: Measured, quantity: QuantityName): Size {
  const known = outcomes.get(measured);
  const outcome = known?.quantity === quantity ? known : outcomeOf(measured, quantity);
  if (outcome !== known) outcomes.set(measured, outcome);
  if ('error' in outcome) throw outcome.error;
  return outcome.size;
}

function outcomeOf(measured: Measured, quantity: QuantityName): Outcome {
  try {
    return { quantity, size: parsed(measured, QUANTITIES[quantity]) };
  } catch (error) {
    if (error instanceof DomainError) return { quantity, error };
    throw error;
  }
}

function parsed(measured: Measured, quantity: QuantityReader): Size {
  const { value, text } = measured;
  const unit = measured.unit ?? undefined;
  if (text != null) {
    if (value != null) throw measureError('measured-twice', {}, '/text');
    return withU(
      at('/text', () => quantity.parse(text, unit)),
      measured,
      quantity,
    );
  }
  if (value == null) throw measureError('measured-not', { kind: quantity.kind }, '/value');
  if (unit === undefined) throw measureError('unit-missing', { kind: quantity.kind }, '/unit');
  return withU({ size: at('/value', () => quantity.from(value, unit)), unit }, measured, quantity);
}

function withU({ size, unit }: { size: number; unit: string }, { u }: Measured, quantity: QuantityReader): Size {
  return u == null ? { size } : { size, u: at('/u', () => quantity.from(u, unit)) };
}

function at<T>(pointer: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    throw error.at(error.code === 'unit-unknown' ? '/unit' : pointer);
  }
}
