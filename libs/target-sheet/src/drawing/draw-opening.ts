import type { PieceName } from '#fit';
import type { SheetDesign } from '../sheet-parts.ts';
import { fittingLabel, lengthLabel, textWidth } from './label.ts';
import { heightAt, roomToTheRight, type Point } from './plane.ts';
import type { Shape } from './span.ts';

/** A place on a piece where the neck opens, in drawing units, y down: an edge that is not sewn, or a slit. */
export interface DrawnOpening {
  readonly from: Point;
  readonly to: Point;
  readonly lengthMm: number;
  /** Its length in words; null beside another place that says it. */
  readonly label: string | null;
  /** Where the words start. */
  readonly labelAt: Point;
}

type Side = 'left' | 'right';

/** From the end of a neck up to words above a shoulder, and over the words of the shoulder itself. */
const ABOVE = { right: 10, left: 34 } as const;
const BESIDE = 6;
const AWAY = 9;
/** Least distance of words below the edge of a neck. */
const BELOW = 9;

interface Size {
  readonly scale: number;
  readonly unit: 'cm' | 'in';
}

/** The opening of a neck on a piece, at its own scale; nothing where this piece has no part of it. */
export function drawOpening(
  piece: PieceName,
  shape: Shape,
  { at, length }: SheetDesign['opening'],
  size: Size,
): DrawnOpening[] {
  if (length <= 0) return [];
  if (at === piece) return slit(shape, length, size);
  return sidesOf(piece, at, shape).flatMap((side, index) => openEdge(shape, side, length, size, index === 0));
}

/** Down from the neck, at the centre. */
function slit({ outline, box }: Shape, length: number, { scale, unit }: Size): DrawnOpening[] {
  const middle = box.right / 2;
  const neck = heightAt(outline, middle);
  if (neck === null) return [];
  const number = lengthLabel(length, unit);
  const labelY = neck * scale - Math.max(BELOW, (length * scale) / 2);
  const room = roomToTheRight(outline, middle, labelY / scale) * scale - 2 * BESIDE;
  return [
    {
      from: [middle * scale, -neck * scale],
      to: [middle * scale, (length - neck) * scale],
      lengthMm: length,
      label: fittingLabel('opening-length', number, room) ?? number,
      labelAt: [middle * scale + BESIDE, -labelY],
    },
  ];
}

/** Outwards from the end of the neck: along a shoulder, its words above it, or along a raglan, its words beside it. */
function openEdge(shape: Shape, side: Side, length: number, { scale, unit }: Size, says: boolean): DrawnOpening[] {
  const edge = edgeFromNeck(shape, side);
  if (edge === null) return [];
  const [from, to] = [edge[0], alongEdge(edge, length)].map(([x, y]): Point => [x * scale, -y * scale]) as [
    Point,
    Point,
  ];
  const drawn = { from, to, lengthMm: length };
  if (!says) return [{ ...drawn, label: null, labelAt: to }];
  const number = lengthLabel(length, unit);
  const room = isSeam(shape) ? shape.box.right * scale - from[0] - AWAY + BESIDE : Infinity;
  const label = fittingLabel('opening-length', number, room) ?? number;
  if (isSeam(shape)) return [{ ...drawn, label, labelAt: [from[0] + AWAY, from[1] + BELOW / 3] }];
  const x = from[0] + (side === 'right' ? BESIDE : -BESIDE - textWidth(label));
  return [{ ...drawn, label, labelAt: [x, from[1] - ABOVE[side]] }];
}

/** A raglan opens along a seam of its own, not at a shoulder. */
const isSeam = ({ value }: Shape): boolean => value('raglan-depth') !== undefined;

/** The sides of a piece at which it opens, seen from outside: at one shoulder, the wearer's left. */
function sidesOf(piece: PieceName, at: SheetDesign['opening']['at'], shape: Shape): Side[] {
  if ((piece !== 'back' && piece !== 'front') || (isSeam(shape) && piece === 'back')) return [];
  if (at === 'shoulders') return ['right', 'left'];
  return at === 'shoulder' ? [piece === 'front' ? 'right' : 'left'] : [];
}

type Edge = readonly [from: Point, to: Point];

/** The edge that goes outwards from the end of the neck; null where there is none. */
function edgeFromNeck({ outline, box, value }: Shape, side: Side): Edge | null {
  const middle = box.right / 2;
  const outwards = side === 'right' ? 1 : -1;
  const neck: Point = [middle + (outwards * (value('neck-width') ?? 0)) / 2, box.top];
  const away = ([x, y]: Point): number => Math.hypot(x - neck[0], y - neck[1]);
  const nearest = outline.reduce((best, _, index) => (away(outline[index]!) < away(outline[best]!) ? index : best), 0);
  const start = outline[nearest]!;
  const outer = [nearest - 1, nearest + 1]
    .map((index) => outline.at(index % outline.length)!)
    .find(([x]) => (x - start[0]) * outwards > 0);
  return outer === undefined ? null : [start, outer];
}

/** A place on an edge, at most its end. */
function alongEdge([[x1, y1], [x2, y2]]: Edge, length: number): Point {
  const share = Math.min(1, length / Math.hypot(x2 - x1, y2 - y1));
  return [x1 + share * (x2 - x1), y1 + share * (y2 - y1)];
}
