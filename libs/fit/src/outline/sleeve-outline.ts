import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { closed, mirroredEdges, pathOf, type DrawnEdge, type Outline } from './drawn-edge.ts';
import { makesHalf } from './half-shape.ts';
import { lengthOf, mirrored, type Path, type Point, type ValueOf } from '../model/path.ts';

/** The wearer’s left sleeve, seen from outside, cuff down: its back is on the right. Null where it makes no shape. */
export function sleeveOutline(v: ValueOf, m: GarmentModel): Outline | null {
  const construction = CONSTRUCTIONS[m.choices.construction];
  const cuff = v(m.sleeve!.cuff);
  const middle = cuff / 2;
  const above = construction.sleeveTopPath(v, m, middle);
  const side = [...sideOf(v, m, middle), above[0]!];
  // A raglan's top is an edge of its own; the top of a cap, or of a straight sleeve, is sewn to the armhole.
  const raglan = construction.comparesRises;
  const right: readonly DrawnEdge[] = [
    { edge: 'right-seam', path: side, length: seamOf(side), kind: cuff === v(m.sleeve!.top) ? 'straight' : 'slope' },
    { edge: 'back-underarm', path: above.slice(0, 2) },
    raglan ? { edge: 'back-raglan', path: above.slice(1, 3) } : { edge: 'back-armhole', path: above.slice(1) },
  ];
  const top = raglan ? above.slice(2) : [];
  if (!makesHalf([...pathOf(right), ...top], middle)) return null;
  const bottom: DrawnEdge = {
    edge: 'cuff',
    path: [
      [0, 0],
      [cuff, 0],
    ],
  };
  return closed([
    bottom,
    ...right,
    ...(raglan ? [{ edge: 'top', path: [...top, ...mirrored(top, middle)] } as const] : []),
    ...mirroredEdges(right, middle),
  ]);
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
