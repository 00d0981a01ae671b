import { checkRequest } from './check-request.ts';
import { chooseCounts, type ChosenCounts } from './choose-counts.ts';
import { countableSheet, type CountablePiece, type SheetToCount } from './countable-sheet.ts';
import { countedOutline } from './counted-outline.ts';
import type { CountedDimension, CountedPiece, Counts, OutsideRange, PickedUp } from './counts.ts';
import { countsError } from './counts-errors.ts';
import type { CountsRequest } from './counts-request.ts';
import { repeatOf } from './demands.ts';
import { isWithin } from './deviation.ts';
import { pitchOf } from './gauges.ts';
import { middleOf } from './middle.ts';
import type { Node } from './node.ts';
import { nodesOf } from './nodes-of.ts';
import { type CountedSides, edgesAlong, nearestCount, shareOut } from './pick-up.ts';
import { type Places, placesOf } from './places.ts';
import { rangeHolds } from './range-holds.ts';
import { regionsOf } from './regions-of.ts';
import { shapingOf } from './shaping-of.ts';
import { systemOf } from './system.ts';

/**
 * A sheet in whole stitches and rows: every dimension, chosen together so that each piece closes and joined edges agree, each
 * in its range where a count lies there; what lies between, and what is picked up. `hundred`: 100 mm in the sheet's unit,
 * which the gauge's length is in too.
 *
 * @throws DomainError `gauge-out-of-range`, `multiple-unusable`, `multiple-larger-than-piece`, `counts-close-nowhere`,
 * `nothing-to-count`, each with a pointer into the request where it is to blame
 */
export function countsOf(toCount: SheetToCount, request: CountsRequest, hundred: number): Counts {
  checkRequest(request, hundred);
  const sheet = countableSheet(toCount);
  const system = systemOf(sheet, nodesOf(sheet, request));
  if (system.nodes.size === 0) throw countsError('nothing-to-count', {});
  const symmetric = new Set(sheet.pieces.filter((piece) => middleOf(piece).symmetric).map(({ piece }) => piece));
  const counts = chooseCounts(sheet, system, symmetric);
  const nodes = [...system.nodes.values()];
  const drawn = sheet.pieces.map((piece) => {
    const places = placesOf(piece, system.nodes, counts);
    return { piece, places, points: countedOutline(piece, places) };
  });
  const sides = new Map(drawn.map((each) => [each.piece.piece, each]));
  return {
    rib: request.gauge.rib === null ? 'as-above' : 'own-gauge',
    pieces: drawn.map((each) => pieceOf(each, nodes, counts, sides, request)),
    outside: nodes.flatMap((node) => outsideOf(node, counts)),
  };
}

function pieceOf(
  { piece, places, points }: CountedSides & { readonly places: Places },
  nodes: readonly Node[],
  counts: ChosenCounts,
  sides: ReadonlyMap<string, CountedSides>,
  request: CountsRequest,
): CountedPiece {
  const own = nodes.filter((node) => node.piece === piece.piece);
  const pickUp = pickUpOf(piece, own, counts, sides, request);
  return {
    piece: piece.piece,
    dimensions: own.map((node) => dimensionOf(node, counts)),
    regions: regionsOf(piece, places, (key) => counts.counts.get(key)),
    shaping: shapingOf(piece, points),
    pickUp,
    outline: points.length === 0 ? null : points.map(({ point }) => point),
  };
}

function dimensionOf(node: Node, counts: ChosenCounts): CountedDimension {
  const { name, axis, fabric, allowance } = node.dimension;
  const length = counts.lengthOf(node.key);
  const wanted = counts.wantedOf(node);
  const below = node.ribBelow === null ? 0 : counts.counts.get(node.ribBelow)!;
  const end = (value: number): number | null => (Number.isFinite(value) ? value - allowance : null);
  return {
    name,
    axis,
    fabric,
    count: counts.counts.get(node.key)! + below,
    measures: length - allowance,
    low: end(wanted.low),
    high: end(wanted.high),
    within: isWithin(length, wanted),
  };
}

function outsideOf(node: Node, counts: ChosenCounts): OutsideRange[] {
  const { name, count, measures, low, high, within } = dimensionOf(node, counts);
  if (within || low === null || high === null) return [];
  const below = node.ribBelow === null ? 0 : counts.lengthOf(node.ribBelow);
  const reason = rangeHolds(node, counts.wantedOf(node), below) ? 'not-together' : 'no-count';
  return [{ piece: node.piece, name, count, measures, low, high, reason }];
}

function pickUpOf(
  band: CountablePiece,
  own: readonly Node[],
  counts: ChosenCounts,
  sides: ReadonlyMap<string, CountedSides>,
  request: CountsRequest,
): PickedUp[] {
  const edges = edgesAlong(band, sides);
  const across = band.dimensions.find(({ axis }) => axis === 'across');
  if (edges.length === 0 || !across) return [];
  const counted = own.find(({ dimension }) => dimension === across);
  if (counted) return shareOut(counts.counts.get(counted.key)!, edges);
  const length = edges.reduce((sum, edge) => sum + edge.length, 0);
  const demands = repeatOf('rib', across, band, request);
  const stitches = nearestCount(length / pitchOf(across, band, request).pitch, demands);
  if (stitches === null) throw countsError('counts-close-nowhere', { piece: band.piece, name: across.name });
  return shareOut(stitches, edges);
}
