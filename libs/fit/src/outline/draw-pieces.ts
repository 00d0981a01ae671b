import type { Piece, PieceName } from '../messages/advice.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import type { Path, ValueOf } from '../model/path.ts';
import type { PlannedPiece } from '../model/planned.ts';
import type { Outline } from './drawn-edge.ts';
import { joinEdges } from './join-edges.ts';
import { outlineOf } from './outline.ts';
import { regionsOf } from './regions.ts';
import { seamsOf } from './seams.ts';

/** A piece drawn, with its joins and its regions. */
interface Shape extends Pick<Piece, 'edges' | 'regions'> {
  readonly outline: Path;
}

/** The shapes of the pieces that make one; `sleeved` says whether there is advice on the sleeve. */
export function drawPieces(
  { garment, pieces }: { readonly garment: GarmentModel; readonly pieces: readonly PlannedPiece[] },
  v: ValueOf,
  sleeved: boolean,
): ReadonlyMap<PieceName, Shape> {
  const drawn = new Map<PieceName, Outline>();
  for (const { piece } of pieces) {
    const outline = piece === 'sleeve' && !sleeved ? null : outlineOf(piece, v, garment);
    if (outline) drawn.set(piece, outline);
  }
  const open = garment.opening ? v(garment.opening.length) : 0;
  const edges = joinEdges(drawn, seamsOf(garment, open), pieces);
  return new Map(
    Array.from(drawn, ([piece, { outline }]) => [
      piece,
      { outline, edges: edges.get(piece)!, regions: regionsOf(piece, outline, v, garment) },
    ]),
  );
}
