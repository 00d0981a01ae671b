import type { PieceName } from '../messages/advice.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { makesHalf, type Outline } from './half-shape.ts';
import { lengthOf, mirrored, type Path, type Point, type ValueOf, withoutRepeats } from '../model/path.ts';

/** A sleeve, cuff down; null where it makes no shape. */
export function sleeveOutline(v: ValueOf, m: GarmentModel): Outline | null {
  const construction = CONSTRUCTIONS[m.choices.construction];
  const cuff = v(m.sleeve!.cuff);
  const middle = cuff / 2;
  const above = construction.sleeveTopPath(v, m, middle);
  const side = sideOf(v, m, middle);
  const right: Path = [...side, ...above];
  if (!makesHalf(right, middle)) return null;
  const edge = lengthOf(construction.comparesRises ? above.slice(0, 3) : above);
  const front: PieceName = m.choices.silhouette === 'cardigan' ? 'left-front' : 'front';
  return {
    outline: withoutRepeats([[0, 0], ...right, ...mirrored(right, middle)]),
    joins: [
      { edge: 'back armhole edge', with: 'back', length: edge },
      { edge: 'front armhole edge', with: front, length: edge },
      { edge: 'underarm', with: 'sleeve', length: seamOf([...side, above[0]!]) },
    ],
  };
}

/** The side of a sleeve below the underarm: the cuff's rib goes straight up, and the sleeve begins wider above it. */
function sideOf(v: ValueOf, { sleeve, body }: GarmentModel, middle: number): Path {
  const corner: Point = [middle + v(sleeve!.cuff) / 2, 0];
  const rib = v(body.rib);
  if (!(rib > 0 && rib < v(sleeve!.underarmSeam))) return [corner];
  return [corner, [corner[0], rib], [middle + v(sleeve!.aboveRib) / 2, rib]];
}

/** The seam along a side: what the sleeve steps out above its rib is worked in one row, and is no part of it. */
const seamOf = ([corner, ...rest]: Path): number =>
  rest.length < 3 ? lengthOf([corner!, ...rest]) : rest[0]![1] + lengthOf(rest.slice(1));
