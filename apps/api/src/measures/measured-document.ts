import type { Measured } from './measured.ts';

/** A chosen length as it was entered, every field named. */
export type LengthDocument = Readonly<{ value: number | null } & Record<'unit' | 'text', string | null>>;

/** Something measured as it was entered, every field named. */
export type MeasuredDocument = LengthDocument & { readonly u: number | null };

export function lengthDocument({ value, unit, text }: Measured): LengthDocument {
  return { value: value ?? null, unit: unit ?? null, text: text ?? null };
}

export function measuredDocument(measured: Measured): MeasuredDocument {
  return { u: measured.u ?? null, ...lengthDocument(measured) };
}
