import type { TheirNameFault } from '#advice-text';
import type { DomainError } from '#measure';
import { escapeToken } from './json-pointer.ts';
import { plannerError } from './planner-error.ts';

/** The place of a name of ours in what a planner takes. */
export const atName = (ourName: string): string => `/names/${escapeToken(ourName)}`;

/** A name of ours cannot have the planner's name. */
export const theirNameError = (ourName: string, fault: TheirNameFault): DomainError =>
  plannerError('their-name', { fault }, atName(ourName));
