import type { DimensionName, PieceName } from '#fit';
import type { Piece, SheetDesign } from '../sheet-parts.ts';
import { drawOpening, type DrawnOpening } from './draw-opening.ts';
import { TEXT_SIZE, fittingLabel, lengthLabel, textWidth } from './label.ts';
import { boxOf, extentAt, roomToTheRight, turned, type Point } from './plane.ts';
import { shapeOf, type Shape, type Span } from './span.ts';
import { isSaid, spansOf } from './spans-of.ts';

/** A dimension line and its words, in drawing units, y down. */
export interface Measure {
  readonly name: DimensionName;
  readonly from: Point;
  readonly to: Point;
  readonly label: string;
  /** Where the words' middle or start stands; `upright` ones read upwards. */
  readonly labelAt: Point;
  readonly upright: boolean;
  readonly anchor: 'middle' | 'start';
}

export type Line = readonly [Point, Point];

/** What something takes up on a drawing, y down. */
interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** One piece as drawn; all in drawing units, y down, its lower left corner at the origin. */
export interface DrawnPiece {
  readonly piece: PieceName;
  readonly outline: readonly Point[];
  /** Upper edge of the rib, and the strokes that show it. */
  readonly rib: readonly Line[];
  readonly measures: readonly Measure[];
  /** Where the neck opens, on this piece. */
  readonly openings: readonly DrawnOpening[];
  /** What the drawing takes up with its lines and words. */
  readonly frame: Frame;
  /** Dimensions that are to be said and have no line. */
  readonly unplaced: readonly DimensionName[];
}

/** Room for a dimension line and its words beside a piece. */
const TRACK = 20;
/** From a line to the middle of its words. */
const AWAY = 9;
const RIB_STROKE = 5;

/** A band stands upright on the drawing, any other piece on its lower edge. */
export const asDrawn = (piece: Piece, outline: readonly Point[]): readonly Point[] =>
  isBand(piece) ? turned(outline) : outline;
export const isBand = ({ workedFrom }: Piece): boolean => workedFrom === 'edge';

/** Draws a piece in mm to a scale. */
export function drawPiece(piece: Piece, opening: SheetDesign['opening'], scale: number, unit: 'cm' | 'in'): DrawnPiece {
  const given = piece.outline ?? [];
  if (given.length === 0) {
    const frame = { left: 0, right: 0, top: 0, bottom: 0 };
    return {
      piece: piece.piece,
      outline: [],
      rib: [],
      measures: [],
      openings: [],
      frame,
      unplaced: piece.dimensions.map(({ name }) => name),
    };
  }
  const shape = shapeOf(piece, asDrawn(piece, given));
  const size: Size = { scale, unit, width: shape.box.right * scale, height: shape.box.top * scale };
  const measures = placed(spansOf(piece.piece, shape), shape.outline, size);
  const openings = drawOpening(piece.piece, shape, opening, size);
  const drawn = new Set(measures.map(({ name }) => name));
  return {
    piece: piece.piece,
    outline: shape.outline.map(([x, y]) => [x * scale, -y * scale]),
    rib: ribLines(shape, scale),
    measures,
    openings,
    frame: around(size, measures, openings),
    unplaced: piece.dimensions.map(({ name }) => name).filter((name) => !drawn.has(name) && !isSaid(shape, name)),
  };
}

interface Size {
  readonly scale: number;
  readonly unit: 'cm' | 'in';
  readonly width: number;
  readonly height: number;
}

/**
 * Gives each span the nearest track on its side that is free there; a span too short for its number gets no line, nor one inside the
 * piece whose words would meet those of another there.
 */
function placed(all: readonly Span[], outline: readonly Point[], size: Size): Measure[] {
  const taken: { side: Span['side']; track: number; from: number; to: number }[] = [];
  const inside: Placing[] = [];
  return all.flatMap((span) => {
    const [from, to] = [span.from * size.scale, span.to * size.scale];
    const room = roomFor(span, outline, size);
    const label = fittingLabel(span.name, lengthLabel(span.to - span.from, size.unit), room);
    if (label === null || to - from < TEXT_SIZE) return [];
    let track = 1;
    const clashes = (other: (typeof taken)[number]): boolean =>
      other.side === span.side && other.track === track && other.from < to - 0.01 && from < other.to - 0.01;
    while (taken.some(clashes)) track += 1;
    taken.push({ side: span.side, track, from, to });
    const line = lineOf(span.side, from, to, span.at * size.scale, track * TRACK, size);
    if (span.side === 'across' || span.side === 'over') {
      if (inside.some(({ labelAt }) => Math.abs(labelAt[1] - line.labelAt[1]) < TEXT_SIZE)) return [];
      inside.push(line);
    }
    return [{ name: span.name, label, ...line }];
  });
}

/** How long the words of a span may be. Inside a piece they keep clear of its middle, where a length runs up. */
function roomFor({ side, from, to, at }: Span, outline: readonly Point[], { scale }: Size): number {
  const along = (to - from) * scale;
  if (side === 'across' || side === 'over') return along / 2 - 2 * AWAY - TEXT_SIZE / 2;
  if (side === 'beside') return roomToTheRight(outline, at, besideAt(from, to)) * scale - AWAY / 2 - 2;
  return along - 2;
}

/** Height of the words beside a line, nearer its upper end: there a neck is wider. */
const besideAt = (from: number, to: number): number => to - (to - from) / 4;

type Placing = Omit<Measure, 'name' | 'label'>;

function lineOf(side: Span['side'], from: number, to: number, at: number, off: number, size: Size): Placing {
  const middle = (from + to) / 2;
  const level = (y: number, labelX: number, labelY: number): Placing => ({
    from: [from, -y],
    to: [to, -y],
    labelAt: [labelX, -labelY],
    upright: false,
    anchor: 'middle',
  });
  const standing = (x: number, labelX: number): Placing => ({
    from: [x, -from],
    to: [x, -to],
    labelAt: [labelX, -middle],
    upright: true,
    anchor: 'middle',
  });
  switch (side) {
    case 'below':
      return level(AWAY - off, middle, -off);
    case 'above':
      return level(size.height + off - AWAY, middle, size.height + off);
    case 'across':
      return { ...level(at, from + AWAY, at - AWAY), anchor: 'start' };
    case 'over':
      return { ...level(at, from + AWAY, at + AWAY), anchor: 'start' };
    case 'left':
      return standing(AWAY - off, -off);
    case 'right':
      return standing(size.width + off - AWAY, size.width + off);
    case 'up':
      return standing(at, at - AWAY);
    case 'beside':
      return { ...standing(at, 0), labelAt: [at + AWAY / 2, -besideAt(from, to)], upright: false, anchor: 'start' };
  }
}

/** The rib as its upper edge and thin strokes. */
function ribLines({ outline, box, value }: Shape, scale: number): Line[] {
  const depth = value('rib-depth');
  const lower = extentAt(outline, box.bottom);
  const upper = depth === undefined ? null : extentAt(outline, depth);
  if (depth === undefined || !lower || !upper) return [];
  const y = -depth * scale;
  const [left, right] = [lower[0] * scale, lower[1] * scale];
  const strokes = Array.from({ length: Math.max(0, Math.ceil((right - left) / RIB_STROKE) - 1) }, (_, index): Line => {
    const x = left + (index + 1) * RIB_STROKE;
    return [
      [x, 0],
      [x, y],
    ];
  });
  return [
    [
      [upper[0] * scale, y],
      [upper[1] * scale, y],
    ],
    ...strokes,
  ];
}

function around(size: Size, measures: readonly Measure[], openings: readonly DrawnOpening[]): Frame {
  const words = openings.flatMap(({ label, labelAt }) =>
    label === null ? [] : [{ label, labelAt, upright: false, anchor: 'start' } as const],
  );
  const reach = [...measures, ...words].flatMap(({ label, labelAt: [x, y], upright, anchor }): Point[] => {
    const along = textWidth(label);
    const half: Point = upright ? [TEXT_SIZE / 2, along / 2] : [anchor === 'start' ? along : along / 2, TEXT_SIZE / 2];
    return [
      [x - half[0], y - half[1]],
      [x + half[0], y + half[1]],
    ];
  });
  const { left, right, bottom, top } = boxOf([[0, 0], [size.width, -size.height], ...reach]);
  return { left, right, top: bottom, bottom: top };
}
