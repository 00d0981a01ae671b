import type { TargetSheet } from '#target-sheet';
import { checkTakes } from './check-takes.ts';
import type { MappingWarning } from './formats/format.ts';
import { FORMATS } from './formats/index.ts';
import { missingNames, type MissingName } from './missing-names.ts';
import type { Json, PlannerTakes } from './planner-takes.ts';

/** A sheet as one planner takes it; `payload` is a JSON value, or the text of a CSV. Or what that planner lacks. */
export type MappedSheet =
  | {
      readonly ok: true;
      readonly payload: Json;
      readonly contentType: string;
      readonly warnings: readonly MappingWarning[];
    }
  | { readonly ok: false; readonly missing: readonly MissingName[] };

/**
 * Writes a sheet as a planner takes it: in its unit, rounded to its step, under its names.
 * A sheet that lacks something required is not mapped; each missing name is said with the measure to take.
 *
 * @throws DomainError the first fault of `checkTakes`, when `takes` has any.
 */
export function mapSheet(sheet: TargetSheet, takes: PlannerTakes): MappedSheet {
  const [fault] = checkTakes(takes);
  if (fault) throw fault;
  const missing = missingNames(sheet, takes.required);
  if (missing.length > 0) return { ok: false, missing };
  const { contentType, write } = FORMATS[takes.format];
  return { ok: true, contentType, ...write(sheet, takes) };
}

/** A mapped payload as the exact text that leaves. */
export const payloadText = (payload: Json): string => (typeof payload === 'string' ? payload : JSON.stringify(payload));
