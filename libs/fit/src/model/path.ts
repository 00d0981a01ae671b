import type { Quantity } from '#measure';

/** A place on a piece: across and along, mm. */
export type Point = readonly [number, number];
export type Path = readonly Point[];

/** The value of a quantity, mm. */
export type ValueOf = (of: Quantity) => number;

const distance = (a: Point, b: Point): number => Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2);

export function lengthOf(path: Path): number {
  let sum = 0;
  for (let i = 1; i < path.length; i++) sum += distance(path[i - 1]!, path[i]!);
  return sum;
}

/** The mirror image about a vertical line, run through the other way. */
export const mirrored = (path: Path, about: number): Path =>
  path.map((point): Point => [2 * about - point[0], point[1]]).reverse();

/** Without points that repeat the one before, and the last where it repeats the first. */
export function withoutRepeats(path: Path): Path {
  const same = (a: Point, b: Point): boolean => distance(a, b) < 1e-9;
  const kept = path.filter((point, i) => i === 0 || !same(point, path[i - 1]!));
  if (kept.length > 1 && same(kept[0]!, kept[kept.length - 1]!)) kept.pop();
  return kept;
}
