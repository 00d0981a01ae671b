import type { TargetSheet } from '#target-sheet';
import { placedDimensions, type SheetDimension } from './sheet-dimension.ts';

/** Rates in a sheet are written to six decimals. */
const NOISE = 1e-4;

/** How a dimension moves when another is rounded, as the sheet's `follows` say. mm a mm. */
export type Rate = (from: SheetDimension, to: SheetDimension) => number;

/**
 * Reads the `follows` of a sheet. They go by name alone, and where several places share a name they speak of the one told
 * first; the others move with that one: by as much where they are as long, in proportion where both move the same others
 * (a sleeve's top is twice the armhole's depth), else not at all (a front band is no neck band).
 */
export function ratesOf(sheet: TargetSheet): Rate {
  const told = new Map<string, SheetDimension>();
  for (const { dimension } of placedDimensions(sheet)) {
    if (!told.has(dimension.name)) told.set(dimension.name, dimension);
  }
  return (from, to) => {
    if (from.name === to.name) return likeness(from, to);
    const first = told.get(to.name);
    return first === undefined ? 0 : (from.follows?.[to.name] ?? 0) * likeness(first, to);
  };
}

/** How much a namesake moves for a millimetre of the other. */
function likeness(one: SheetDimension, other: SheetDimension): number {
  if (Math.abs((one.value ?? 0) - (other.value ?? 0)) < NOISE) return 1;
  const names = Object.keys(one.follows ?? {});
  if (names.length === 0 || names.length !== Object.keys(other.follows ?? {}).length) return 0;
  const ratios = names.map((name) => (one.follows?.[name] ?? NaN) / (other.follows?.[name] ?? NaN));
  const [ratio = 0] = ratios;
  return ratios.every((each) => Math.abs(each - ratio) <= NOISE * Math.abs(ratio)) ? ratio : 0;
}
