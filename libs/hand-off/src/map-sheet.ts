import { DomainError } from '#measure';
import { csvLine, inUnit, toCsv, type TargetSheet } from '#target-sheet';
import { checkTakes } from './check-takes.ts';
import { fill, layOut } from './json-shape.ts';
import { lookUpIn } from './look-up.ts';
import { namesOf, parseOurName } from './our-name.ts';
import type { Json, PlannerTakes } from './planner-takes.ts';
import type { TakenDimension } from './quantity.ts';
import { roundSheet } from './round-sheet.ts';
import { dimensionsOnly, placedDimensions, type Needs } from './sheet-dimension.ts';

/** A required name the sheet has no value for, why, and the measures to take so that it has. */
export interface MissingName {
  readonly name: string;
  readonly reason: string;
  readonly needs: Needs;
}

/** Something to know before sending: a name left out, or a length rounded further than it may be. */
export interface MappingWarning {
  readonly name: string;
  readonly message: string;
}

/** A sheet as one planner takes it; `payload` is a JSON value, or the text of a CSV. Or what that planner lacks. */
export type MappedSheet =
  | {
      readonly ok: true;
      readonly payload: Json;
      readonly contentType: string;
      readonly warnings: readonly MappingWarning[];
    }
  | { readonly ok: false; readonly missing: readonly MissingName[] };

const JSON_TYPE = 'application/json';
const CSV_TYPE = 'text/csv; charset=utf-8';

/**
 * Writes a sheet as a planner takes it: in its unit, rounded to its step, under its names.
 * A sheet that lacks something required is not mapped; each missing name is said with the measure to take.
 *
 * @throws DomainError the first fault of `checkTakes`, when `takes` has any.
 */
export function mapSheet(sheet: TargetSheet, takes: PlannerTakes): MappedSheet {
  const [fault] = checkTakes(takes);
  if (fault) throw new DomainError(fault.code, fault.message, fault.pointer);
  const missing = missingNames(sheet, takes.required);
  if (missing.length > 0) return { ok: false, missing };
  if (takes.format === 'sheet') {
    return { ok: true, payload: asJson(inUnit(sheet, takes.unit)), contentType: JSON_TYPE, warnings: [] };
  }
  const names = Object.keys(takes.names).length > 0 ? Object.keys(takes.names) : namesOf(sheet);
  const { sheet: rounded, warnings } = roundTaken(inUnit(dimensionsOnly(sheet), takes.unit), takes, names);
  return { ok: true, ...write(rounded, takes, names), warnings: [...leftOut(sheet, names), ...warnings] };
}

/** A mapped payload as the exact text that leaves. */
export const payloadText = (payload: Json): string => (typeof payload === 'string' ? payload : JSON.stringify(payload));

/** A sheet is plain JSON data already. */
const asJson = (sheet: TargetSheet): Json => sheet as unknown as Json;

function missingNames(sheet: TargetSheet, names: readonly string[]): MissingName[] {
  const lookUp = lookUpIn(sheet);
  return names.flatMap((name) => {
    const found = lookUp(name);
    return 'value' in found ? [] : [{ name, reason: found.reason, needs: found.needs }];
  });
}

const leftOut = (sheet: TargetSheet, names: readonly string[]): MappingWarning[] =>
  missingNames(sheet, names).map(({ name, reason }) => ({ name, message: `Left out. ${reason}` }));

function roundTaken(sheet: TargetSheet, { roundingStep, unit }: PlannerTakes, names: readonly string[]) {
  if (roundingStep === null) return { sheet, warnings: [] };
  const { sheet: rounded, outside } = roundSheet(sheet, roundingStep, takenDimensions(sheet, names));
  const warnings = outside.map(({ place, dimension }) => ({
    name: `${place}/${dimension.name}`,
    message: `No multiple of ${roundingStep} ${unit} lies within how far it may be rounded.`,
  }));
  return { sheet: rounded, warnings };
}

/** The dimensions named, each by its value where that is named, else by its size as made. */
function takenDimensions(sheet: TargetSheet, names: readonly string[]): TakenDimension[] {
  const parts = new Map<string, Set<string>>();
  for (const name of names) {
    const parsed = parseOurName(name);
    if (parsed === null || typeof parsed === 'string') continue;
    const key = `${parsed.place}/${parsed.dimension}`;
    parts.set(key, (parts.get(key) ?? new Set()).add(parsed.part));
  }
  return placedDimensions(sheet).flatMap(({ place, dimension }): TakenDimension[] => {
    const named = parts.get(`${place}/${dimension.name}`);
    if (named?.has('value')) return [{ place, dimension, by: 'value' }];
    return named?.has('as-made') ? [{ place, dimension, by: 'as-made' }] : [];
  });
}

function write(
  sheet: TargetSheet,
  takes: PlannerTakes,
  names: readonly string[],
): { payload: Json; contentType: string } {
  const lookUp = lookUpIn(sheet);
  const value = (name: string): string | number | undefined => {
    const found = lookUp(name);
    return 'value' in found ? found.value : undefined;
  };
  const ownNames = Object.keys(takes.names).length === 0;
  if (takes.format === 'csv') {
    const payload = ownNames
      ? toCsv(sheet)
      : csvLine(Object.values(takes.names)) + csvLine(names.map((name) => value(name) ?? null));
    return { payload, contentType: CSV_TYPE };
  }
  const payload = ownNames
    ? Object.fromEntries(
        names.flatMap((name) => [[name, value(name)] as const].filter(([, each]) => each !== undefined)),
      )
    : fill(layOut(takes.names), value);
  return { payload: payload as Json, contentType: JSON_TYPE };
}
