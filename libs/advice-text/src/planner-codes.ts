import type { MessageOf, NoParams } from '#measure';

/** Why a name on the planner's side cannot be filled, by code; `by` and `holds` are our names for what stands in its way. */
export interface TheirNameCodes {
  readonly 'no-slash': { readonly pointer: string };
  readonly 'tilde-not-escaped': { readonly pointer: string };
  readonly 'name-reserved': { readonly name: string };
  readonly 'element-not-numbered': { readonly pointer: string };
  readonly 'filled-above': { readonly pointer: string; readonly by: string };
  readonly 'filled-already': { readonly pointer: string; readonly by: string };
  readonly 'holds-others': { readonly pointer: string; readonly holds: string };
  /** `pointer`: empty for the whole document. */
  readonly 'list-with-key': { readonly pointer: string; readonly element: string; readonly key: string };
  readonly 'list-with-gap': { readonly pointer: string; readonly element: string };
  readonly 'column-unnamed': { readonly ourName: string };
  readonly 'column-is-formula': { readonly column: string };
  readonly 'column-filled-already': { readonly column: string; readonly by: string };
}
export type TheirNameFault = MessageOf<TheirNameCodes>;

/** What can be wrong with what a planner is said to take, by code. */
export interface PlannerErrors {
  readonly 'rounding-a-sheet': NoParams;
  readonly 'rounding-step': {
    readonly step: number;
    readonly least: number;
    readonly most: number;
    readonly unit: string;
  };
  readonly 'unknown-name': { readonly name: string };
  readonly 'their-name': { readonly fault: TheirNameFault };
  readonly 'naming-a-sheet': NoParams;
  readonly 'required-not-named': { readonly name: string };
}

/** Why a sheet has no value for one of our names. */
export interface MissingCodes {
  readonly 'unknown-name': { readonly name: string };
  readonly 'not-in-sheet': { readonly name: string; readonly silhouette: string; readonly construction: string };
  /** `reason`: as the sheet says it. */
  readonly 'no-advice': { readonly reason: string };
  readonly 'part-missing': { readonly name: string };
}
export type MissingReason = MessageOf<MissingCodes>;

/** What to know before a sheet goes to a planner. */
export interface PlannerWarningCodes {
  readonly 'left-out': { readonly reason: MissingReason };
  readonly 'rounded-outside-limits': { readonly step: number; readonly unit: string };
}
export type PlannerWarning = MessageOf<PlannerWarningCodes>;
