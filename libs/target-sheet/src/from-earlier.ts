import type { Craft } from '#fabric';
import type { CheckName } from '#fit';
import { RATIO_CHECKS } from './ratio-checks.ts';

type Json = Readonly<Record<string, unknown>>;
const isRecord = (json: unknown): json is Json => typeof json === 'object' && json !== null && !Array.isArray(json);
const each = (list: unknown, of: (item: Json) => Json): unknown =>
  Array.isArray(list) ? list.map((item: unknown) => (isRecord(item) ? of(item) : item)) : list;

/** The checks that are of comfort alone. */
const OF_COMFORT: readonly string[] = [
  'cuff-stays',
  'under-the-arm',
  'neck-depth',
  'sleeve-taper',
  'front-and-back',
] satisfies CheckName[];

/**
 * A sheet as parsed JSON in the shape of now, where it was made before necks opened, checks were of comfort, and what follows a
 * dimension named its piece, or before pieces had edges, regions and identities, which it then has none of. Its numbers stay. Anything
 * else comes back as it is. `craft` is what a sheet is said to be made in that does not say so.
 */
export function fromEarlier(json: unknown, craft: Craft = 'knit'): unknown {
  if (!isRecord(json) || !isRecord(json['design'])) return json;
  const opened = 'opening' in json['design'] ? json : withOpening(json, json['design']);
  return 'craft' in opened ? opened : withEdges(opened, craft);
}

function withOpening(json: Json, design: Json): Json {
  const { assembled, pieces, checks } = json;
  const places = firstPlaces(assembled, pieces);
  const dimensions = (list: unknown): unknown => each(list, (dimension) => withPlaces(dimension, places));
  return {
    ...json,
    design: { ...design, opening: { at: 'none', length: 0 } },
    assembled: dimensions(assembled),
    pieces: each(pieces, (piece) => ({ ...piece, dimensions: dimensions(piece['dimensions']) })),
    checks: each(checks, withComfort),
  };
}

/** A wish was its words alone, and had no place; a check did not say its unit. Each dimension defines its piece: how they follow each other was not said. */
const withEdges = (json: Json, craft: Craft): Json => ({
  ...json,
  craft,
  stitch: null,
  collisions: each(json['collisions'], ({ wishes, ...collision }) => ({
    ...collision,
    wishes: Array.isArray(wishes)
      ? wishes.map((wish: unknown) => (typeof wish === 'string' ? { text: wish } : wish))
      : wishes,
    piece: 'assembled',
  })),
  checks: each(json['checks'], (check) => ({
    ...check,
    unit: RATIO_CHECKS.some((ratio) => ratio === check['check']) ? '1' : json['unit'],
  })),
  pieces: each(json['pieces'], ({ joins: _, ...piece }) => ({
    ...piece,
    edges: [],
    regions: [],
    dimensions: each(piece['dimensions'], (dimension) => ({ ...dimension, defining: true })),
    identities: [],
  })),
});

/** The place where each name of a dimension comes first: the finished garment, or a piece. */
function firstPlaces(assembled: unknown, pieces: unknown): ReadonlyMap<string, string> {
  const places = new Map<string, string>();
  const see = (dimensions: unknown, place: unknown): void => {
    for (const one of Array.isArray(dimensions) ? (dimensions as unknown[]) : []) {
      const name = isRecord(one) ? one['name'] : undefined;
      if (typeof name === 'string' && typeof place === 'string' && !places.has(name)) places.set(name, place);
    }
  };
  see(assembled, 'assembled');
  for (const piece of Array.isArray(pieces) ? (pieces as unknown[]) : [])
    if (isRecord(piece)) see(piece['dimensions'], piece['piece']);
  return places;
}

function withPlaces(dimension: Json, places: ReadonlyMap<string, string>): Json {
  const { follows } = dimension;
  if (!isRecord(follows)) return dimension;
  const listed = Object.entries(follows).flatMap(([name, slope]) => {
    const piece = places.get(name);
    return piece === undefined ? [] : [{ piece, name, slope }];
  });
  return { ...dimension, follows: listed };
}

function withComfort(check: Json): Json {
  const comfort = OF_COMFORT.includes(String(check['check']));
  return { ...check, comfort, ...(comfort && check['verdict'] === 'fails' ? { verdict: 'poor' } : {}) };
}

/** Rules that the model no longer has. */
const GONE: readonly string[] = ['head-margin', 'neck-widened-most', 'underarm-difference-most'];

/** A maker's own rules without those that the model no longer has. */
export const withoutGoneRules = <T>(rules: Readonly<Record<string, T>>): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(rules).filter(([name]) => !GONE.includes(name)));
