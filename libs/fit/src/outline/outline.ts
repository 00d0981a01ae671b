import type { Quantity } from '#measure';
import type { PieceName } from '../messages/advice.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { INPUTS } from '../model/inputs.ts';
import { halfFrontOutline, wholeBodyOutline } from './body-outline.ts';
import { closed, type Outline } from './drawn-edge.ts';
import { LEAST_LENGTH } from './half-shape.ts';
import type { ValueOf } from '../model/path.ts';
import { sleeveOutline } from './sleeve-outline.ts';

/** The outline of a piece; null where a number that it needs is not known or makes no shape. */
export function outlineOf(piece: PieceName, v: ValueOf, m: GarmentModel): Outline | null {
  if (!isDrawable(piece, v, m)) return null;
  const drawn = anyOutline(piece, v, m);
  if (drawn === null) return null;
  const numbers = [...drawn.outline.flat(), ...drawn.edges.map(({ length }) => length)];
  return numbers.every(Number.isFinite) ? drawn : null;
}

function anyOutline(piece: PieceName, v: ValueOf, m: GarmentModel): Outline | null {
  switch (piece) {
    case 'back':
    case 'front':
      return wholeBodyOutline(v, m, piece);
    case 'left-front':
    case 'right-front':
      return halfFrontOutline(v, m, piece);
    case 'sleeve':
      return sleeveOutline(v, m);
    case 'front-band':
      return strip(v(m.body.half!.edge), v(INPUTS.frontBand));
    case 'neck-band':
      return strip(v(m.neck.edge), v(m.neck.band));
    case 'armhole-band':
      return strip(2 * v(m.armhole.pieceEdge), v(m.neck.band));
  }
}

/** A band, picked up along its lower edge. */
function strip(width: number, height: number): Outline {
  const [start, end, above, back] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ] as const;
  return closed([
    { edge: 'picked-up-edge', path: [start, end] },
    { edge: 'right-end', path: [end, above] },
    { edge: 'free-edge', path: [above, back] },
    { edge: 'left-end', path: [back, start] },
  ]);
}

/** Whether a piece makes a shape at all: its sides, shoulders and seams are there, and its neck ends above its lower edge. */
function isDrawable(piece: PieceName, v: ValueOf, m: GarmentModel): boolean {
  const there = (...all: readonly Quantity[]): boolean => all.every((each) => v(each) > LEAST_LENGTH);
  const { girths, body, neck, sleeve } = m;
  switch (piece) {
    case 'sleeve':
      return there(sleeve!.cuff, sleeve!.top, sleeve!.underarmSeam, ...topOf(m));
    case 'neck-band':
      return there(neck.edge, neck.band);
    case 'armhole-band':
      return there(m.armhole.pieceEdge, neck.band);
    case 'front-band':
      return there(body.half!.edge, INPUTS.frontBand);
    case 'back':
      return isDrawableBody(piece, v, m) && there(girths.backHem);
    case 'front':
      return isDrawableBody(piece, v, m) && there(girths.frontHem);
    case 'left-front':
    case 'right-front':
      return isDrawableBody(piece, v, m) && there(body.half!.hem, body.half!.neck, body.half!.edge);
  }
}

/** What of a sleeve's top must be there. */
function topOf({ sleeve, choices }: GarmentModel): readonly Quantity[] {
  const { above, topEdge } = sleeve!;
  const { comparesRises, sleeveTopIs } = CONSTRUCTIONS[choices.construction];
  if (sleeveTopIs === 'seam') return [];
  return comparesRises ? [above!] : [above!, topEdge!];
}

function isDrawableBody(piece: PieceName, v: ValueOf, { body, neck, armhole }: GarmentModel): boolean {
  const { shoulders } = body;
  if (!(v(body.pieceToUnderarm) > LEAST_LENGTH && v(neck.piece.width) > LEAST_LENGTH)) return false;
  if (!(v(armhole.onPiece) > LEAST_LENGTH)) return false;
  const back = piece === 'back';
  if (!shoulders) {
    const depth = back ? 0 : v(armhole.pieceNeck.front);
    return v(armhole.raglan!.run) > LEAST_LENGTH && depth < v(body.pieceLength);
  }
  const depth = v(back ? armhole.pieceNeck.back : armhole.pieceNeck.front);
  const shoulder = v(back ? shoulders.back : shoulders.front);
  return shoulder > LEAST_LENGTH && depth >= 0 && depth < v(body.shoulderToHem);
}
