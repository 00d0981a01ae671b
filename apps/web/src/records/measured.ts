import type { components } from '../api.generated.ts';
import { empty } from '../notebook/blank.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { read, type Quantity } from '../reading/read.ts';

type Unit = NonNullable<components['schemas']['BodyMeasureDto']['unit']>;
type LengthUnit = 'mm' | 'cm' | '[in_i]';

/** What the store takes of something measured: the text as it was written, and the unit of a bare number. */
export interface Measured<U extends Unit = Unit> {
  readonly text?: string | null;
  readonly value?: number | null;
  readonly unit?: U | null;
}

const UNITS: Readonly<Record<Quantity, Readonly<Record<Tape, Unit>>>> = {
  length: { cm: 'cm', in: '[in_i]' },
  signed: { cm: 'cm', in: '[in_i]' },
  small: { cm: 'mm', in: '[in_i]' },
  mass: { cm: 'kg', in: '[lb_av]' },
};

/** Null where nothing can be read: it stays in this browser as it was written. */
export function toMeasured(typed: Typed | undefined, quantity: Quantity): Measured | null {
  const reading = read(typed, quantity);
  if (typed === undefined || reading.is !== 'value' || reading.value === 0) return null;
  return { text: typed.text.trim(), unit: UNITS[quantity][typed.tape] };
}

export const toLength = (
  typed: Typed | undefined,
  quantity: 'length' | 'small' | 'signed',
): Measured<LengthUnit> | null => toMeasured(typed, quantity) as Measured<LengthUnit> | null;

/** Back to what is written on the page. */
export function fromMeasured(measured: Measured | null | undefined, quantity: Quantity): Typed {
  const inches =
    measured?.unit === '[in_i]' || measured?.unit === 'in' || measured?.unit === '[lb_av]' || measured?.unit === 'lb';
  const tape: Tape = inches ? 'in' : 'cm';
  if (measured?.text != null) return { text: measured.text, tape };
  if (measured?.value == null) return empty(tape);
  const named = measured.unit == null || measured.unit === UNITS[quantity][tape];
  return { text: named ? String(measured.value) : `${measured.value} ${plainUnit(measured.unit)}`, tape };
}

const plainUnit = (unit: Unit | null | undefined): string =>
  unit === '[in_i]' ? 'in' : unit === '[lb_av]' ? 'lb' : (unit ?? '');
