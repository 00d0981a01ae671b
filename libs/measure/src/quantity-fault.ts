import type { MessageOf } from './message.ts';

type Nothing = Record<never, never>;

/** Why a text cannot be taken as one length or one mass, by code. */
export interface QuantityFaults {
  'too-long': { readonly longest: number };
  empty: Nothing;
  negative: Nothing;
  'too-large': Nothing;
  'no-number': Nothing;
  'several-numbers': Nothing;
  /** `1,234`: the comma may group thousands or be the decimal sign. */
  'comma-ambiguous': { readonly plain: string; readonly decimal: string };
  'divided-by-zero': { readonly numerator: string };
  'improper-fraction': { readonly fraction: string; readonly example: string };
  'unit-missing': Nothing;
  'unknown-unit': { readonly unit: string; readonly known: readonly string[] };
  /** Numbers and units that do not belong together: `5 cm 4 in`. */
  'units-disagree': Nothing;
  /** The smaller unit holds more than one of the larger: `5 ft 12 in`. */
  'smaller-unit-too-large': Nothing;
}

export type QuantityFault = MessageOf<QuantityFaults>;
