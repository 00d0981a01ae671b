import type { DimensionName, Join } from '#fit';
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
  return { fabric: 'main', allowance, asMade: (value + allowance) / (1 + growth), ...assembled(name, value), ...more };
}

/** Lower half of an ellipse hung between (x − width/2, y) and (x + width/2, y), from right to left, ends included. */
export const neckCurve = (x: number, y: number, width: number, depth: number): Point[] =>
  Array.from({ length: 17 }, (_, step) => {
    const angle = (Math.PI * step) / 16;
    return [x + (width / 2) * Math.cos(angle), y - depth * Math.sin(angle)] as const;
  });

export const join = (edge: string, withPiece: string, length: number): Join => ({ edge, with: withPiece, length });
