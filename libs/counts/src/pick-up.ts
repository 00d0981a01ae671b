import type { CountablePiece } from './countable-sheet.ts';
import type { CountedPoint } from './counted-outline.ts';
import type { PickedUp } from './counts.ts';
import type { Demand } from './node.ts';
import { pointsOf } from './shaping-of.ts';

/** A piece as counted, for what is picked up along it. */
export interface CountedSides {
  readonly piece: CountablePiece;
  readonly points: readonly CountedPoint[];
}

/** An edge that stitches are picked up along: how long it came out, and its rows where it runs along them. */
interface Along {
  readonly piece: string;
  readonly edge: string;
  readonly length: number;
  readonly rows: number | null;
}

/** The edges that a band is picked up along, in the sheet's order. */
export function edgesAlong(band: CountablePiece, sides: ReadonlyMap<string, CountedSides>): Along[] {
  const pickedUp = band.edges.find(({ edge }) => edge === 'picked-up-edge');
  return (pickedUp?.joins ?? []).flatMap((join) => {
    const side = sides.get(join.piece);
    const edge = side?.piece.edges.find((each) => each.edge === join.edge);
    if (!side || !edge || side.points.length === 0) return [];
    const points = pointsOf(edge, side.points);
    const upright = points.every(({ stitches }) => Math.abs(stitches - points[0]!.stitches) < 1e-6);
    const rows = Math.abs(points.at(-1)!.rows - points[0]!.rows);
    return [{ piece: join.piece, edge: join.edge, length: lengthOf(points), rows: upright ? Math.round(rows) : null }];
  });
}

/** The whole number nearest to a length in stitches that meets what is asked, at least 1; null where none within reach does. */
export function nearestCount(stitches: number, demands: readonly Demand[]): number | null {
  const reach = demands.reduce((product, { of }) => product * of, 1) + 1;
  let nearest: number | null = null;
  for (let count = Math.max(1, Math.ceil(stitches - reach)); count <= stitches + reach; count += 1) {
    if (!demands.every(({ of, plus }) => (count - plus) % of === 0)) continue;
    if (nearest === null || Math.abs(count - stitches) < Math.abs(nearest - stitches)) nearest = count;
  }
  return nearest;
}

/** Shares picked-up stitches out over edges by their lengths: whole numbers, each within one of its share, that add up. */
export function shareOut(stitches: number, edges: readonly Along[]): PickedUp[] {
  const whole = edges.reduce((sum, { length }) => sum + length, 0);
  let length = 0;
  let before = 0;
  return edges.map((edge) => {
    length += edge.length;
    const upTo = whole === 0 ? 0 : Math.round((stitches * length) / whole);
    const picked = upTo - before;
    before = upTo;
    const perRow = edge.rows ? picked / edge.rows : null;
    return { ...edge, stitches: picked, perRow };
  });
}

const lengthOf = (points: readonly CountedPoint[]): number =>
  points.slice(1).reduce((sum, { point: [x, y] }, at) => {
    const [fromX, fromY] = points[at]!.point;
    return sum + Math.hypot(x - fromX, y - fromY);
  }, 0);
