import { inUnit, type TargetSheet } from '#target-sheet';
import { lookUpIn } from '../look-up.ts';
import { missingNames } from '../missing-names.ts';
import { namesOf, parseOurName } from '../our-name.ts';
import type { PlannerTakes } from '../planner-takes.ts';
import type { TakenDimension } from '../quantity.ts';
import { roundSheet } from '../round-sheet.ts';
import { dimensionsOnly, placedDimensions } from '../sheet-dimension.ts';
import type { MappingWarning } from './format.ts';

/** Whether a planner has names of its own, and is sent no more than these. */
export const hasOwnNames = ({ names }: PlannerTakes): boolean => Object.keys(names).length > 0;

/** A sheet in a planner's unit and rounded to its step, the names that it is sent, and what stands under each. */
interface NamedFields {
  readonly rounded: TargetSheet;
  readonly names: readonly string[];
  readonly value: (name: string) => string | number | undefined;
  readonly warnings: readonly MappingWarning[];
}

export function namedFields(sheet: TargetSheet, takes: PlannerTakes): NamedFields {
  const names = hasOwnNames(takes) ? Object.keys(takes.names) : namesOf(sheet);
  const { sheet: rounded, warnings } = roundTaken(inUnit(dimensionsOnly(sheet), takes.unit), takes, names);
  const lookUp = lookUpIn(rounded);
  const value = (name: string): string | number | undefined => {
    const found = lookUp(name);
    return 'value' in found ? found.value : undefined;
  };
  return { rounded, names, value, warnings: [...leftOut(sheet, names), ...warnings] };
}

const leftOut = (sheet: TargetSheet, names: readonly string[]): MappingWarning[] =>
  missingNames(sheet, names).map(({ name, reason }) => ({ name, code: 'left-out', params: { reason } }));

function roundTaken(sheet: TargetSheet, { roundingStep, unit }: PlannerTakes, names: readonly string[]) {
  if (roundingStep === null) return { sheet, warnings: [] };
  const { sheet: rounded, outside } = roundSheet(sheet, roundingStep, takenDimensions(sheet, names));
  const warnings = outside.map(({ place, dimension }): MappingWarning => ({
    name: `${place}/${dimension.name}`,
    code: 'rounded-outside-limits',
    params: { step: roundingStep, unit },
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
