import type { Typed } from '../notebook/typed.ts';

/** A question about an entered value, with the corrections that it offers. */
export interface ValueQuestion<N extends string> {
  readonly text: string;
  readonly repairs: readonly { readonly label: string; readonly to: Readonly<Partial<Record<N, Typed>>> }[];
  /** False for an impossible value: the computation leaves it out, and it cannot be confirmed. */
  readonly mayBeRight: boolean;
}
