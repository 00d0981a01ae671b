/** Drawings are in millimetres, x to the right from the middle of the body, y down. */
export type Point = readonly [x: number, y: number];

const written = (n: number): string => n.toFixed(1);

/** A polyline or polygon as SVG path data. */
export function straight(points: readonly Point[], closed = false): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${written(x)} ${written(y)}`).join('') + (closed ? 'Z' : '');
}

/** A smooth line through the points (Catmull-Rom, as cubic Béziers). */
export function smooth(points: readonly Point[], closed = false): string {
  const at = (i: number): Point => {
    const n = points.length;
    return points[closed ? (i + n) % n : Math.max(0, Math.min(n - 1, i))] ?? [0, 0];
  };
  const first = at(0);
  let path = `M${written(first[0])} ${written(first[1])}`;
  for (let i = 0; i < points.length - (closed ? 0 : 1); i++) {
    const [p0, p1, p2, p3] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const c1: Point = [p1[0] + (p2[0] - p0[0]) / 6, p1[1] + (p2[1] - p0[1]) / 6];
    const c2: Point = [p2[0] - (p3[0] - p1[0]) / 6, p2[1] - (p3[1] - p1[1]) / 6];
    path += `C${[...c1, ...c2, ...p2].map(written).join(' ')}`;
  }
  return path + (closed ? 'Z' : '');
}

export const mirrored = (points: readonly Point[]): Point[] => points.map(([x, y]): Point => [-x, y]).reverse();

export const along = (from: Point, to: Point, share: number): Point => [
  from[0] + (to[0] - from[0]) * share,
  from[1] + (to[1] - from[1]) * share,
];

/** The point beside a direction (radians from straight down, outwards positive), `aside` to its outer side. */
export const stepFrom = (from: Point, angle: number, length: number, aside = 0): Point => [
  from[0] + Math.sin(angle) * length + Math.cos(angle) * aside,
  from[1] + Math.cos(angle) * length - Math.sin(angle) * aside,
];
