import type { DimensionName } from '#fit';
import type { Piece } from '../sheet-parts.ts';
import { boxOf, extentAt, type Box, type Point } from './plane.ts';

/**
 * Where a dimension runs on its piece, mm: below or above it (from, to are x) or to its left or right (y); or inside,
 * `across` (x, at height `at`; `over` with its words above it), `up` (y, at x = `at`), or `beside` (as `up`, with its words set beside it).
 */
export interface Span {
  readonly name: DimensionName;
  readonly side: 'below' | 'above' | 'left' | 'right' | 'across' | 'over' | 'up' | 'beside';
  readonly from: number;
  readonly to: number;
  readonly at: number;
}

/** A piece that can be drawn: its outline, and the values of its dimensions. */
export interface Shape {
  readonly outline: readonly Point[];
  readonly box: Box;
  readonly value: (name: DimensionName) => number | undefined;
}

/** The outline is moved into the first quadrant, where spans are counted from. */
export function shapeOf(piece: Piece, given: readonly Point[]): Shape {
  const { left, bottom } = boxOf(given);
  const outline = given.map(([x, y]): Point => [x - left, y - bottom]);
  const values = new Map(piece.dimensions.flatMap(({ name, value }) => (value === null ? [] : [[name, value]])));
  return { outline, box: boxOf(outline), value: (name) => values.get(name) };
}

type Side = Span['side'];

/** From a place upwards, or to the right, as long as the dimension; nothing where it has no value. */
export function run(shape: Shape, side: Side, name: DimensionName, from: number, at = 0): Span[] {
  const value = shape.value(name);
  return value === undefined ? [] : [{ name, side, from, to: from + value, at }];
}

/** From a place downwards, or to the left. */
export function runBack(shape: Shape, side: Side, name: DimensionName, to: number, at = 0): Span[] {
  const value = shape.value(name);
  return value === undefined ? [] : [{ name, side, from: to - value, to, at }];
}

/** What two lengths of one drawing may differ by and still be the same, mm. */
const SAME = 0.5;
export const same = (one: number, other: number): boolean => Math.abs(one - other) < SAME;

/** A width: along the lower or upper edge of the outline if it is that edge’s, else across the piece at a height. */
export function width(shape: Shape, name: DimensionName, edge: 'below' | 'above', height: number): Span[] {
  const value = shape.value(name);
  if (value === undefined) return [];
  const onEdge = extentAt(shape.outline, edge === 'below' ? shape.box.bottom : shape.box.top);
  if (onEdge && same(onEdge[1] - onEdge[0], value))
    return [{ name, side: edge, from: onEdge[0], to: onEdge[1], at: 0 }];
  const inside = extentAt(shape.outline, height);
  return inside ? [{ name, side: 'across', from: inside[0], to: inside[1], at: height }] : [];
}
