export type Point = readonly [number, number];

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export function boxOf(points: readonly Point[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** Where a closed outline crosses a height, from left to right; both ends of an edge that lies in it. */
function crossings(outline: readonly Point[], y: number): number[] {
  const xs = outline.flatMap(([x1, y1], index) => {
    const [x2, y2] = outline[(index + 1) % outline.length] ?? [x1, y1];
    if (y < Math.min(y1, y2) || y > Math.max(y1, y2)) return [];
    return y1 === y2 ? [x1, x2] : [x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)];
  });
  return xs.toSorted((one, other) => one - other);
}

/** Leftmost and rightmost x of a closed outline at a height; null where it does not reach it. */
export function extentAt(outline: readonly Point[], y: number): readonly [number, number] | null {
  const xs = crossings(outline, y);
  const [left, right] = [xs[0], xs.at(-1)];
  return left === undefined || right === undefined ? null : [left, right];
}

/** How high a closed outline reaches at an x; null where it is not there. */
export function heightAt(outline: readonly Point[], x: number): number | null {
  const ys = crossings(
    outline.map(([px, py]): Point => [py, px]),
    x,
  );
  return ys.at(-1) ?? null;
}

/** From a point to the right, as far as the outline; Infinity where nothing is in the way. */
export const roomToTheRight = (outline: readonly Point[], x: number, y: number): number =>
  (crossings(outline, y).find((crossing) => crossing > x) ?? Infinity) - x;

/** A quarter turn to the left. */
export const turned = (outline: readonly Point[]): Point[] => outline.map(([x, y]) => [-y, x]);
