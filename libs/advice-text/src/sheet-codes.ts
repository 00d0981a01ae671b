import type { MessageOf, NoParams } from '#measure';

/** How a part of a JSON document breaks its schema. */
export interface FlawCodes {
  readonly 'wrong-type': { readonly types: readonly string[]; readonly found: string };
  readonly 'not-the-constant': { readonly constant: string | number | boolean | null };
  readonly 'not-among': { readonly known: readonly (string | null)[] };
  readonly 'not-finite': NoParams;
  readonly 'below-minimum': { readonly minimum: number };
  readonly 'above-maximum': { readonly maximum: number };
  readonly 'too-short': { readonly minLength: number };
  readonly 'too-long': { readonly maxLength: number };
  readonly 'pattern-mismatch': { readonly pattern: string };
  readonly 'too-few-items': { readonly minItems: number };
  readonly 'too-many-items': { readonly maxItems: number };
  readonly 'field-missing': { readonly name: string };
  readonly 'field-unknown': NoParams;
}
export type FlawMessage = MessageOf<FlawCodes>;

/** A flaw of a JSON value, and where: a JSON Pointer (RFC 6901) into the value. */
export type Flaw = FlawMessage & { readonly pointer: string };

/** What can be wrong with a target sheet, by code. */
export interface SheetErrors {
  readonly 'title-too-long': { readonly longest: number };
  readonly 'sheet-format-unknown': { readonly format: string };
  /** `version`: of the sheet; `major`: what can be read here. */
  readonly 'sheet-version-too-new': { readonly version: string; readonly major: number };
  /** The first flaws, and how many more there are. */
  readonly 'sheet-invalid': { readonly flaws: readonly Flaw[]; readonly more: number };
}
