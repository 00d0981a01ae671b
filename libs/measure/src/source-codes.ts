import type { How } from './how.ts';
import type { NoParams } from './message.ts';

/** Where a value may be from, whatever it is of, by code. */
export interface CommonSourceCodes {
  readonly measured: { readonly how: How };
  readonly assumed: NoParams;
  /** A published table, as its publisher is cited. */
  readonly publication: { readonly title: string };
}
