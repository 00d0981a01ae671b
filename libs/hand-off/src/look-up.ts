import type { MissingReason } from '#advice-text';
import type { TargetSheet } from '#target-sheet';
import { parseOurName, SHEET_FACTS, type Part } from './our-name.ts';
import { tidy } from './round-to-step.ts';
import { isOnPiece, placedDimensions, type Needs, type SheetDimension } from './sheet-dimension.ts';

/** What a sheet answers to one of our names: a value, or why there is none and the measures that would give it. */
type Found = { readonly value: number | string } | { readonly reason: MissingReason; readonly needs: Needs };

/** What a sheet answers to our names. Lengths in the sheet's unit. */
export function lookUpIn(sheet: TargetSheet): (name: string) => Found {
  const dimensions = new Map(
    placedDimensions(sheet).map(({ place, dimension }) => [`${place}/${dimension.name}`, dimension]),
  );
  return (name) => lookUp(name, sheet, dimensions);
}

function lookUp(name: string, sheet: TargetSheet, dimensions: ReadonlyMap<string, SheetDimension>): Found {
  const parsed = parseOurName(name);
  if (parsed === null) return { reason: { code: 'unknown-name', params: { name } }, needs: [] };
  if (typeof parsed === 'string') return { value: SHEET_FACTS[parsed](sheet) };
  const inSheet = `${parsed.place}/${parsed.dimension}`;
  const dimension = dimensions.get(inSheet);
  if (!dimension) {
    const { construction, silhouette } = sheet.design;
    const params = { name: inSheet, silhouette, construction };
    return { reason: { code: 'not-in-sheet', params }, needs: [] };
  }
  if (dimension.noAdvice) {
    const { reason, needs } = dimension.noAdvice;
    return { reason: { code: 'no-advice', params: { reason } }, needs };
  }
  const value = partOf(dimension, parsed.part);
  if (value === null) return { reason: { code: 'part-missing', params: { name } }, needs: [] };
  return { value: tidy(value) };
}

function partOf(dimension: SheetDimension, part: Part): number | null {
  switch (part) {
    case 'value':
      return dimension.value;
    case 'as-made':
      return isOnPiece(dimension) ? dimension.asMade : null;
    case 'low':
    case 'high':
      return dimension[part] ?? null;
  }
}
