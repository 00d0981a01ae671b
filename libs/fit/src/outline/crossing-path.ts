import type { Point } from '../model/path.ts';

const turn = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number =>
  Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));

const within = ([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): boolean =>
  x >= Math.min(ax, bx) && x <= Math.max(ax, bx) && y >= Math.min(ay, by) && y <= Math.max(ay, by);

/** Whether two segments have a point in common, by the turns of their ends. */
function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0])) return false;
  if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1])) return false;
  const ofC = turn(a, b, c);
  const ofD = turn(a, b, d);
  const ofA = turn(c, d, a);
  const ofB = turn(c, d, b);
  if (ofC * ofD < 0 && ofA * ofB < 0) return true;
  return (
    (ofC === 0 && within(a, b, c)) ||
    (ofD === 0 && within(a, b, d)) ||
    (ofA === 0 && within(c, d, a)) ||
    (ofB === 0 && within(c, d, b))
  );
}

/** Whether an open path, no point of it twice in a row, touches or crosses itself anywhere. */
export function crossesItself(path: readonly Point[]): boolean {
  for (let i = 0; i + 1 < path.length; i++) {
    for (let j = i + 2; j + 1 < path.length; j++) {
      if (meet(path[i]!, path[i + 1]!, path[j]!, path[j + 1]!)) return true;
    }
  }
  return false;
}
