import type { DimensionName, Edge, EdgeKind, EdgeName, Join, Region } from '#fit';
import type { AssembledDimension, PieceDimension, Term } from '#target-sheet';

type Point = readonly [number, number];

/** A dimension of a sample: one term, and 10 mm to either side unless said otherwise. */
export const assembled = (
  name: DimensionName,
  value: number,
  more: Partial<AssembledDimension> = {},
): AssembledDimension => ({
  name,
  value,
  u: 5,
  low: value - 10,
  high: value + 10,
  because: [because(name, value)],
  ...more,
});

export const because = (term: string, value: number, u = 5, from = 'sample'): Term => ({ term, value, u, from });

type OnPiece = Partial<Omit<PieceDimension, 'name' | 'value'>>;
export const across = (name: DimensionName, value: number, more: OnPiece = {}): PieceDimension =>
  onPiece(name, value, { axis: 'across', ...more });
export const along = (name: DimensionName, value: number, more: OnPiece = {}): PieceDimension =>
  onPiece(name, value, { axis: 'along', ...more });

/** Two percent of growth along, none across. */
function onPiece(name: DimensionName, value: number, more: OnPiece & Pick<PieceDimension, 'axis'>): PieceDimension {
  const allowance = more.allowance ?? 0;
  const growth = more.axis === 'along' ? 0.02 : 0;
  return {
    fabric: 'main',
    defining: true,
    allowance,
    asMade: (value + allowance) / (1 + growth),
    ...assembled(name, value),
    ...more,
  };
}

/** Lower half of an ellipse hung between (x − width/2, y) and (x + width/2, y), from right to left, ends included. */
export const neckCurve = (x: number, y: number, width: number, depth: number): Point[] =>
  Array.from({ length: 17 }, (_, step) => {
    const angle = (Math.PI * step) / 16;
    return [x + (width / 2) * Math.cos(angle), y - depth * Math.sin(angle)] as const;
  });

/** What an edge is joined to. */
export const to = (piece: Join['piece'], edge: EdgeName, mirrored?: 1): Join => ({
  piece,
  edge,
  ...(mirrored && { mirrored }),
});

/** Edges in order round an outline: name, how many of its sides, kind, joins. */
export function edges(
  outline: readonly Point[],
  runs: readonly (readonly [EdgeName, sides: number, EdgeKind, ...Join[]])[],
): Edge[] {
  let from = 0;
  return runs.map(([edge, sides, kind, ...joins]) => {
    const points = Array.from({ length: sides + 1 }, (_, side) => outline[(from + side) % outline.length]!);
    const length = points
      .slice(1)
      .reduce((sum, [x, y], index) => sum + Math.hypot(x - points[index]![0], y - points[index]![1]), 0);
    const drawn = { edge, from, to: (from + sides) % outline.length, kind, length, joins };
    from += sides;
    return drawn;
  });
}

/** A rib on the stitches above it, or of its own, and what lies above. */
export const regions = (
  above: 'body' | 'sleeve',
  rib: number,
  height: number,
  width: number,
  startsAt = width,
): Region[] => [
  {
    region: 'rib',
    fabric: 'rib',
    from: 0,
    to: rib,
    stitches: above === 'body' ? 'as-above' : 'own',
    width,
    startsAt,
  },
  { region: above, fabric: 'main', from: rib, to: height, stitches: 'own', width: startsAt },
];

export const bandRegion = (width: number, depth: number): Region[] => [
  { region: 'rib', fabric: 'rib', from: 0, to: depth, stitches: 'own', width },
];
