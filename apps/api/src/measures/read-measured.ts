import { DomainError } from '#measure';
import type { Measured, Size } from './measured.ts';
import type { QuantityKind } from './quantity-kind.ts';

/** The size in mm or g. @throws DomainError that says what was read and what would be right; its pointer names value, unit or text */
export function readMeasured(measured: Measured, kind: QuantityKind): Size {
  const unit = measured.unit ?? undefined;
  if (measured.text != null) {
    if (measured.value != null) throw new DomainError('measured-twice', 'give value or text, not both', '/text');
    return withU(
      at('/text', () => kind.parse(measured.text ?? '', unit)),
      measured,
      kind,
    );
  }
  const { value } = measured;
  if (value == null) throw new DomainError('measured-not', `is missing: ${kind.howTo}`, '/value');
  if (unit === undefined) throw new DomainError('unit-missing', `is missing: ${kind.howTo}`, '/unit');
  return withU({ size: at('/value', () => kind.from(value, unit)), unit }, measured, kind);
}

function withU({ size, unit }: { size: number; unit: string }, { u }: Measured, kind: QuantityKind): Size {
  return u == null ? { size } : { size, u: at('/u', () => kind.from(u, unit)) };
}

function at<T>(pointer: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    throw error.at(error.code === 'unit-unknown' ? '/unit' : pointer);
  }
}
