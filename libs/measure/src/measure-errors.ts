import { errorsOf } from './errors-of.ts';
import type { QuantityFault } from './quantity-fault.ts';

export type QuantityKind = 'length' | 'mass';

/** A text that could not be taken as a quantity, and why. A long text is cut. */
export interface UnreadText {
  readonly kind: QuantityKind;
  readonly text: string;
  readonly fault: QuantityFault;
}

/** A number with its unit that is no length or mass. */
export interface UnusableNumber {
  readonly kind: QuantityKind;
  readonly value: number;
  readonly unit: string;
  readonly fault: 'too-large' | 'negative';
}

/** What can be wrong with a number, a length or a mass, by code. */
export interface MeasureErrors {
  'length-unreadable': UnreadText;
  'length-ambiguous': UnreadText;
  'length-unit-missing': UnreadText;
  'length-out-of-range': UnreadText | UnusableNumber;
  'mass-unreadable': UnreadText;
  'mass-ambiguous': UnreadText;
  'mass-unit-missing': UnreadText;
  'mass-out-of-range': UnreadText | UnusableNumber;
  'unit-unknown': { readonly kind: QuantityKind; readonly text: string };
  /** Both a value and a text were given. */
  'measured-twice': Record<never, never>;
  'measured-not': { readonly kind: QuantityKind };
  'unit-missing': { readonly kind: QuantityKind };
  'step-invalid': { readonly step: number };
  'chance-out-of-range': { readonly chance: number };
  'uncertainty-invalid': { readonly name: string; readonly u: number };
  'division-by-zero': Record<never, never>;
  'root-not-differentiable': { readonly value: number };
}

export const measureError = errorsOf<MeasureErrors>();
