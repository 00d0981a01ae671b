import type { CountableDimension, CountablePiece, CountableSheet } from './countable-sheet.ts';
import type { CountsRequest } from './counts-request.ts';
import { demandsOn } from './demands.ts';
import { lengthOf, pitchOf } from './gauges.ts';
import { FROM_LOWER_EDGE } from './names.ts';
import { keyOf, type Node } from './node.ts';

/** The dimensions of a sheet that are counted, in its order; what has no value or is a seam's length is not. */
export function nodesOf(sheet: CountableSheet, request: CountsRequest): Node[] {
  return sheet.pieces.flatMap((piece) =>
    piece.dimensions
      .filter(({ value, derived }) => value !== null && derived !== true)
      .map((dimension) => nodeOf(dimension, piece, request)),
  );
}

function nodeOf(dimension: CountableDimension, piece: CountablePiece, request: CountsRequest): Node {
  const { name, allowance, low, high } = dimension;
  return {
    key: keyOf(piece.piece, name),
    piece: piece.piece,
    dimension,
    length: lengthOf(dimension),
    low: (low ?? -Infinity) + allowance,
    high: (high ?? Infinity) + allowance,
    ...pitchOf(dimension, piece, request),
    ribBelow: ribBelow(dimension, piece, request),
    demands: demandsOn(dimension, piece, request),
  };
}

function ribBelow({ name, axis, fabric }: CountableDimension, piece: CountablePiece, { gauge }: CountsRequest) {
  if (gauge.rib === null || axis === 'across' || fabric === 'rib' || !FROM_LOWER_EDGE.has(name)) return null;
  const rib = piece.dimensions.find((each) => each.name === 'rib-depth' && each.value !== null);
  return rib ? keyOf(piece.piece, rib.name) : null;
}
