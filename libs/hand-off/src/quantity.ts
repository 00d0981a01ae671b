import type { Limits } from './round-to-step.ts';
import { isOnPiece, type PlacedDimension, type SheetDimension } from './sheet-dimension.ts';

/** A dimension a planner takes, and which of its lengths the planner works from: as worn, or off the needles. */
export interface TakenDimension extends PlacedDimension {
  readonly by: 'value' | 'as-made';
}

/** One length however often a sheet states it: a back's and a front's width, a depth on its piece and assembled. */
export interface Quantity {
  readonly members: readonly TakenDimension[];
  /** Any of them, to speak for all. */
  readonly dimension: SheetDimension;
  /** The length that is rounded, its limits, and how much of it a millimetre of the value as worn is. */
  readonly start: number;
  readonly limits: Limits;
  readonly slope: number;
}

/** How much `asMade` changes with the value: 1/(1 + growth). 1 where the sheet gives none. */
export function asMadeSlope(dimension: SheetDimension): number {
  if (!isOnPiece(dimension) || dimension.asMade === null || dimension.value === null) return 1;
  const worn = dimension.value + dimension.allowance;
  return worn === 0 ? 1 : dimension.asMade / worn;
}

/** The length of a taken dimension that is rounded; null where the sheet does not give it. */
function startOf({ dimension, by }: TakenDimension): number | null {
  if (by === 'value') return dimension.value;
  return isOnPiece(dimension) ? dimension.asMade : null;
}

/** Taken dimensions gathered into quantities: same name, same length. Those without a value are left out. */
export function groupEqual(taken: readonly TakenDimension[]): Quantity[] {
  const groups = new Map<string, TakenDimension[]>();
  for (const each of taken) {
    const start = startOf(each);
    if (start === null) continue;
    const key = `${each.dimension.name} ${each.by} ${start.toFixed(6)}`;
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  return [...groups.values()].flatMap((members) => {
    const [first] = members;
    return first ? [quantityOf(first, members)] : [];
  });
}

/** The tightest limits of all members hold for all. */
function quantityOf(first: TakenDimension, members: readonly TakenDimension[]): Quantity {
  const value = first.dimension.value ?? 0;
  const start = startOf(first) ?? 0;
  const slope = first.by === 'value' ? 1 : asMadeSlope(first.dimension);
  const low = Math.max(...members.map(({ dimension }) => dimension.low ?? -Infinity));
  const high = Math.min(...members.map(({ dimension }) => dimension.high ?? Infinity));
  const limits = { low: start + (low - value) * slope, high: start + (high - value) * slope };
  return { members, dimension: first.dimension, start, limits, slope };
}
