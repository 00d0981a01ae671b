import type { Measured } from './measured.ts';

/** What was entered, every field named. */
export type MeasuredDocument = Readonly<Record<'value' | 'u', number | null> & Record<'unit' | 'text', string | null>>;

export function measuredDocument({ value, unit, text, u }: Measured): MeasuredDocument {
  return { value: value ?? null, unit: unit ?? null, text: text ?? null, u: u ?? null };
}

export function measuredOrNull(measured: Measured | null | undefined): MeasuredDocument | null {
  return measured == null ? null : measuredDocument(measured);
}
