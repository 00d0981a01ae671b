import type { PieceName } from '#fit';
import type { SheetDesign } from '../sheet-parts.ts';
import { fittingLabel, lengthLabel, textWidth } from './label.ts';
import { heightAt, type Point } from './plane.ts';
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

/** The opening of a neck on a piece, at its own scale; nothing where this piece has no part of it. */
export function drawOpening(
  piece: PieceName,
  shape: Shape,
  { at, length }: SheetDesign['opening'],
  { scale, unit }: { readonly scale: number; readonly unit: 'cm' | 'in' },
): DrawnOpening[] {
  if (length <= 0) return [];
  const onPaper = ([x, y]: Point): Point => [x * scale, -y * scale];
  const number = lengthLabel(length, unit);
  const full = fittingLabel('opening-length', number, Infinity)!;
  const { right } = shape.box;
  if (at === piece) {
    const middle = right / 2;
    const neck = heightAt(shape.outline, middle);
    if (neck === null) return [];
    const labelY = neck * scale - Math.max(BELOW, (length * scale) / 2);
    return [
      {
        from: onPaper([middle, neck]),
        to: onPaper([middle, neck - length]),
        lengthMm: length,
        label: full,
        labelAt: [middle * scale + BESIDE, -labelY],
      },
    ];
  }
  return sidesOf(piece, at, shape).flatMap((side, index): DrawnOpening[] => {
    const edge = edgeFromNeck(shape, side);
    if (edge === null) return [];
    const [start, end] = [edge[0], alongEdge(edge, length)];
    const drawn = { from: onPaper(start), to: onPaper(end), lengthMm: length };
    if (index > 0) return [{ ...drawn, label: null, labelAt: drawn.to }];
    if (isSeam(shape)) {
      const x = drawn.from[0] + AWAY;
      const label = fittingLabel('opening-length', number, right * scale - x + BESIDE) ?? number;
      return [{ ...drawn, label, labelAt: [x, drawn.from[1] + BELOW / 3] }];
    }
    const x = drawn.from[0] + (side === 'right' ? BESIDE : -BESIDE - textWidth(full));
    return [{ ...drawn, label: full, labelAt: [x, drawn.from[1] - ABOVE[side]] }];
  });
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
