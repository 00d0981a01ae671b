import type { DimensionName } from '#fit';
import type { TargetSheet } from '#target-sheet';

/** A dimension of the finished garment, mm; null where the sheet does not give it. */
export function finishedDimension(sheet: TargetSheet, name: DimensionName): number | null {
  return sheet.assembled.find((dimension) => dimension.name === name)?.value ?? null;
}
