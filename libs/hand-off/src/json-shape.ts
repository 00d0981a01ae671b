import { escapeToken, isIndex, parsePointer } from './json-pointer.ts';
import type { Json } from './planner-takes.ts';

/** A place in the planner's document: a field to fill, or a place with places below it. */
interface Place {
  readonly pointer: string;
  ourName: string | null;
  readonly below: Map<string, Place>;
}

export interface ShapeFault {
  readonly ourName: string;
  readonly message: string;
}

/** A planner's document, laid out but not filled; `faults` empty when it can be. */
export interface JsonShape {
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
    const message = put(root, ourName, pointer);
    if (message !== null) faults.push({ ourName, message });
  }
  collectListFaults(root, faults);
  return { root, faults };
}

/** Puts one name at its pointer; the reason when it cannot be. */
function put(root: Place, ourName: string, pointer: string): string | null {
  const parsed = parsePointer(pointer);
  if ('wrong' in parsed) return parsed.wrong;
  let place = root;
  let path = '';
  for (const token of parsed.tokens) {
    if (place.ourName !== null) return `"${place.pointer}" is filled by ${place.ourName}, so nothing fits below it`;
    path += `/${escapeToken(token)}`;
    const next = place.below.get(token) ?? emptyPlace(path);
    place.below.set(token, next);
    place = next;
  }
  if (place.ourName !== null) return `"${pointer}" is filled by ${place.ourName} already`;
  if (place.below.size > 0) return `"${pointer}" holds ${anyNameIn(place)}, so it cannot be a value itself`;
  place.ourName = ourName;
  return null;
}

function anyNameIn(place: Place): string {
  if (place.ourName !== null) return place.ourName;
  for (const next of place.below.values()) return anyNameIn(next);
  return 'another name';
}

const isList = (place: Place): boolean => place.below.size > 0 && [...place.below.keys()].every(isIndex);

function collectListFaults(place: Place, faults: ShapeFault[]): void {
  const keys = [...place.below.keys()];
  const where = place.pointer === '' ? 'the document' : `"${place.pointer}"`;
  for (const [key, next] of place.below) {
    const mixed = isIndex(key) && !isList(place);
    const beyond = isList(place) && Number(key) >= keys.length;
    if (mixed) {
      const other = keys.find((each) => !isIndex(each)) ?? '';
      faults.push({ ourName: anyNameIn(next), message: `${where} cannot be a list ("${key}") and hold "${other}"` });
    } else if (beyond) {
      faults.push({
        ourName: anyNameIn(next),
        message: `${where} is a list, and not every element before ${key} is named`,
      });
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
