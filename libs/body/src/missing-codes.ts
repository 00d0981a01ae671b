import type { MessageOf, NoParams } from '#measure';
import type { BodyNote } from './note-codes.ts';

/** Why a body has no value for a dimension, by code. */
export interface BodyMissingCodes {
  readonly 'not-measured': NoParams;
  readonly 'not-asked-for': NoParams;
  readonly 'not-estimated': NoParams;
  readonly 'chest-needed': NoParams;
  readonly 'chest-or-age-needed': { readonly figure: 'child' | 'baby' };
  /** The published table of that label does not give it. */
  readonly 'not-in-table': { readonly table: string };
  readonly 'not-published': { readonly figure: 'child' | 'baby' };
  readonly 'no-size-row': { readonly note: BodyNote };
}

export type BodyMissing = MessageOf<BodyMissingCodes>;
