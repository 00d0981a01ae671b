import type { TheirNameFault } from '#advice-text';
import { escapeToken, isIndex, parsePointer } from './json-pointer.ts';
import type { Json } from './planner-takes.ts';

/** A place in the planner's document: a field to fill, or a place with places below it. */
interface Place {
  readonly pointer: string;
  ourName: string | null;
  readonly below: Map<string, Place>;
}

interface ShapeFault {
  readonly ourName: string;
  readonly fault: TheirNameFault;
}

/** A planner's document, laid out but not filled; `faults` empty when it can be. */
interface JsonShape {
  readonly root: Place;
  readonly faults: readonly ShapeFault[];
}

const emptyPlace = (pointer: string): Place => ({ pointer, ourName: null, below: new Map() });

/**
 * Lays out the document that `names` (ours → JSON Pointer) describes. A place whose keys are all element numbers is a
 * list, any other an object. Every name that cannot have its place is named, with the one that stands in its way.
 */
export function layOut(names: Readonly<Record<string, string>>): JsonShape {
  const root = emptyPlace('');
  const faults: ShapeFault[] = [];
  for (const [ourName, pointer] of Object.entries(names)) {
    const fault = put(root, ourName, pointer);
    if (fault !== null) faults.push({ ourName, fault });
  }
  collectListFaults(root, faults);
  return { root, faults };
}

/** Puts one name at its pointer; the reason when it cannot be. */
function put(root: Place, ourName: string, pointer: string): TheirNameFault | null {
  const parsed = parsePointer(pointer);
  if ('wrong' in parsed) return parsed.wrong;
  let place = root;
  let path = '';
  for (const token of parsed.tokens) {
    if (place.ourName !== null) {
      return { code: 'filled-above', params: { pointer: place.pointer, by: place.ourName } };
    }
    path += `/${escapeToken(token)}`;
    const next = place.below.get(token) ?? emptyPlace(path);
    place.below.set(token, next);
    place = next;
  }
  if (place.ourName !== null) return { code: 'filled-already', params: { pointer, by: place.ourName } };
  if (place.below.size > 0) return { code: 'holds-others', params: { pointer, holds: anyNameIn(place) } };
  place.ourName = ourName;
  return null;
}

/** A name at a place or below it; there is no place that leads to none. */
function anyNameIn(place: Place): string {
  if (place.ourName !== null) return place.ourName;
  for (const next of place.below.values()) return anyNameIn(next);
  return '';
}

const isList = (place: Place): boolean => place.below.size > 0 && [...place.below.keys()].every(isIndex);

function collectListFaults(place: Place, faults: ShapeFault[]): void {
  const keys = [...place.below.keys()];
  const { pointer } = place;
  for (const [key, next] of place.below) {
    const mixed = isIndex(key) && !isList(place);
    const beyond = isList(place) && Number(key) >= keys.length;
    if (mixed) {
      const other = keys.find((each) => !isIndex(each)) ?? '';
      const params = { pointer, element: key, key: other };
      faults.push({ ourName: anyNameIn(next), fault: { code: 'list-with-key', params } });
    } else if (beyond) {
      faults.push({ ourName: anyNameIn(next), fault: { code: 'list-with-gap', params: { pointer, element: key } } });
    }
    collectListFaults(next, faults);
  }
}

/**
 * Fills a document laid out without faults. What has no value is left out of an object, and is null in a list, where
 * the place of the others counts.
 */
export function fill(shape: JsonShape, value: (ourName: string) => Json | undefined): Json {
  return filled(shape.root, value) ?? {};
}

function filled(place: Place, value: (ourName: string) => Json | undefined): Json | undefined {
  if (place.ourName !== null) return value(place.ourName);
  if (isList(place)) {
    return Array.from({ length: place.below.size }, (_, index) => {
      const next = place.below.get(String(index));
      return (next && filled(next, value)) ?? null;
    });
  }
  const entries = [...place.below].flatMap(([key, next]) => {
    const inside = filled(next, value);
    return inside === undefined ? [] : [[key, inside] as const];
  });
  return entries.length > 0 ? Object.fromEntries(entries) : undefined;
}
