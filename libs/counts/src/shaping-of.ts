import type { CountableEdge, CountablePiece } from './countable-sheet.ts';
import type { CountedPoint } from './counted-outline.ts';
import type { Shaping } from './counts.ts';
import { isSame } from './gauges.ts';
import { halvesOf } from './halves.ts';
import { middleOf } from './middle.ts';
import { spread } from './spread.ts';

/** Less than this of a stitch or a row is none. */
const NONE = 1e-6;

/**
 * What is increased and decreased along the edges of a piece, from the edge where the work begins: of one side where both are
 * alike. A step out above a rib is a matter of regions and left out here.
 */
export function shapingOf(piece: CountablePiece, points: readonly CountedPoint[]): Shaping[] {
  if (points.length === 0) return [];
  const { symmetric } = middleOf(piece);
  const ribEnds = piece.regions.filter(({ fabric }) => fabric === 'rib').map(({ to }) => to);
  const shaped = piece.edges.flatMap((edge) => {
    const along = pointsOf(edge, points);
    if (edge.edge === 'neck') return neckOf(edge, along, symmetric);
    if (edge.kind === 'curve') return symmetric && isLeft(along) ? [] : curveOf(edge, along, symmetric);
    const heights = pointsOf(edge, piece.outline!).map((point) => point[1]);
    return along.slice(1).flatMap((upper, index) => {
      const lower = along[index]!;
      const onLeft = symmetric && (lower.stitches < 0 || upper.stitches < 0);
      const atRib = ribEnds.some((end) => heights.slice(index, index + 2).every((height) => isSame(height, end)));
      return onLeft || atRib ? [] : segmentOf(edge, lower, upper, symmetric);
    });
  });
  return shaped.toSorted((a, b) => a.fromRow - b.fromRow);
}

/** The points of an edge, in the outline's order; an outline goes round. */
export function pointsOf<P>({ from, to }: CountableEdge, points: readonly P[]): P[] {
  const end = to > from ? to : to + points.length;
  return Array.from({ length: end - from + 1 }, (_, index) => points[(from + index) % points.length]!);
}

const isLeft = (along: readonly CountedPoint[]): boolean => along.every(({ stitches }) => stitches <= NONE);

function segmentOf({ edge }: CountableEdge, one: CountedPoint, other: CountedPoint, symmetric: boolean): Shaping[] {
  const [lower, upper] = one.rows <= other.rows ? [one, other] : [other, one];
  const change = Math.abs(upper.stitches) - Math.abs(lower.stitches);
  const rows = upper.rows - lower.rows;
  const stitches = Math.round(Math.abs(change));
  // The lower and the upper edge of a piece are what it begins and ends with.
  if (stitches === 0 || isEnd(edge)) return [];
  const outOrIn = change > 0 ? 1 : -1;
  const at = { edge, sides: symmetric ? 2 : 1, stitches, fromRow: Math.round(lower.rows) } as const;
  if (rows < NONE) return [{ ...at, kind: outOrIn > 0 ? 'cast-on' : 'bind-off', rows: 0, every: [] }];
  const whole = Math.round(rows);
  return [{ ...at, kind: outOrIn > 0 ? 'increase' : 'decrease', rows: whole, every: spread(stitches, whole) }];
}

const ENDS: ReadonlySet<string> = new Set([
  'hem',
  'cuff',
  'picked-up-edge',
  'free-edge',
  'left-end',
  'right-end',
  'top',
]);
const isEnd = (edge: string): boolean => ENDS.has(edge);

function curveOf({ edge }: CountableEdge, along: readonly CountedPoint[], symmetric: boolean): Shaping[] {
  const stitches = Math.round(extent(along.map((each) => each.stitches)));
  const rows = Math.round(extent(along.map((each) => each.rows)));
  if (stitches === 0) return [];
  return [{ edge, sides: symmetric ? 2 : 1, kind: 'curve', stitches, rows, fromRow: lowest(along), every: [] }];
}

function neckOf({ edge }: CountableEdge, along: readonly CountedPoint[], symmetric: boolean): Shaping[] {
  const stitches = Math.round(extent(along.map((each) => each.stitches)));
  const rows = Math.round(extent(along.map((each) => each.rows)));
  const halves = symmetric ? { halves: halvesOf(stitches) } : {};
  return [{ edge, sides: 1, kind: 'curve', stitches, rows, fromRow: lowest(along), every: [], ...halves }];
}

const extent = (all: readonly number[]): number => Math.max(...all) - Math.min(...all);
const lowest = (along: readonly CountedPoint[]): number => Math.round(Math.min(...along.map(({ rows }) => rows)));
