import type { ChosenCounts } from './choose-counts.ts';
import type { CountablePiece } from './countable-sheet.ts';
import { middleOf } from './middle.ts';
import { FROM_LOWER_EDGE, FROM_TOP, FULL_WIDTHS } from './names.ts';
import { keyOf, type Node } from './node.ts';

/** A place of a piece: as on the sheet, as counted, and in stitches or rows. */
interface Place {
  readonly at: number;
  readonly length: number;
  readonly count: number;
}

/** Where the places of a piece went when it was counted: away from its middle line, and up from its lower edge. */
export interface Places {
  across(away: number): Place;
  along(up: number): Place;
}

/** A place goes where the dimension that ends there went, or lies between those on both sides of it as it did. */
export function placesOf(piece: CountablePiece, nodes: ReadonlyMap<string, Node>, counts: ChosenCounts): Places {
  const read = reader(piece, nodes, counts);
  const [across, along] = [acrossPlaces(piece, read), alongPlaces(piece, read)];
  return { across: (away) => between(across, away), along: (up) => between(along, up) };
}

type Read = (name: string) => Place | null;

function reader({ piece }: CountablePiece, nodes: ReadonlyMap<string, Node>, counts: ChosenCounts): Read {
  return (name) => {
    const key = keyOf(piece, name);
    const node = nodes.get(key);
    if (!node || node.dimension.value === null) return null;
    const below = node.ribBelow === null ? 0 : (counts.counts.get(node.ribBelow) ?? 0);
    const length = counts.lengthOf(key) - node.dimension.allowance;
    return { at: node.dimension.value, length, count: counts.counts.get(key)! + below };
  };
}

function acrossPlaces(piece: CountablePiece, read: Read): Place[] {
  const { symmetric } = middleOf(piece);
  const widths = piece.dimensions.filter(({ name, axis }) => axis === 'across' && FULL_WIDTHS.has(name));
  const share = symmetric ? 0.5 : 1;
  const full = widths.flatMap(({ name }) => [scaled(read(name), share)]);
  const beside = [
    inside(scaled(read('width'), share), read('armhole-inset')),
    inside(scaled(read('width'), share), read('underarm-bind-off')),
    inside(scaled(read('width'), share), read('raglan-bind-off')),
    inside(scaled(read('sleeve-top-width'), share), read('underarm-bind-off')),
    inside(scaled(read('sleeve-top-width'), share), read('raglan-bind-off')),
    symmetric ? null : outside(read('neck-width'), read('shoulder-width')),
  ];
  return inOrder([...full, ...beside]);
}

function alongPlaces(piece: CountablePiece, read: Read): Place[] {
  const heights = piece.dimensions.filter(({ name, axis }) => axis === 'along' && FROM_LOWER_EDGE.has(name));
  const from = heights.map(({ name }) => read(name));
  const top = read('shoulder-to-hem') ?? read('centre-back-length');
  const depths = piece.dimensions.filter(({ name, axis }) => axis === 'along' && FROM_TOP.has(name));
  const cap = outside(read('underarm-seam'), read('cap-height') ?? read('sleeve-raglan-depth'));
  const raglan = outside(read('body-to-underarm'), read('raglan-depth'));
  return inOrder([...from, ...depths.map(({ name }) => inside(top, read(name))), cap, raglan]);
}

const scaled = (place: Place | null, by: number): Place | null =>
  place && { at: place.at * by, length: place.length * by, count: place.count * by };

const outside = (one: Place | null, other: Place | null): Place | null =>
  one && other && { at: one.at + other.at, length: one.length + other.length, count: one.count + other.count };

const inside = (one: Place | null, other: Place | null): Place | null => outside(one, scaled(other, -1));

/** From the line outwards, each place once. */
function inOrder(places: readonly (Place | null)[]): Place[] {
  const there = places.filter((place): place is Place => place !== null && place.at > 0);
  const sorted = [{ at: 0, length: 0, count: 0 }, ...there.toSorted((a, b) => a.at - b.at)];
  return sorted.filter((place, index) => index === 0 || place.at - sorted[index - 1]!.at > 1e-6 * place.at);
}

function between(places: readonly Place[], at: number): Place {
  const above = places.findIndex((place) => place.at >= at * (1 - 1e-6));
  const high = places[above === -1 ? places.length - 1 : above]!;
  const low = places[Math.max(0, above - 1)]!;
  if (above === -1) return { at, length: high.length + (at - high.at), count: high.count };
  if (above === 0 || Math.abs(high.at - at) <= 1e-6 * high.at) return high;
  const part = (at - low.at) / (high.at - low.at);
  const mix = (a: number, b: number): number => a + part * (b - a);
  return { at, length: mix(low.length, high.length), count: mix(low.count, high.count) };
}
