import { measureError } from './measure-errors.ts';

/**
 * The nearest multiple of a step; a value half way goes away from zero. Any unit, the same for both.
 *
 * @throws DomainError `step-invalid` when the step is not a positive number.
 */
export function roundTo(value: number, step: number): number {
  if (!(step > 0 && Number.isFinite(step))) throw measureError('step-invalid', { step });
  const steps = Math.sign(value) * Math.round(Math.abs(value) / step);
  /** Twelve digits: 3 × 0.1 is 0.3, not 0.30000000000000004; and −0 is 0. */
  return Number((steps * step).toPrecision(12));
}
