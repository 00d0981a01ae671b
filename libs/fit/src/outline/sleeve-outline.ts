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
  const corner: Point = [cuff, 0];
  const above = construction.sleeveTopPath(v, m, middle);
  const right: Path = [corner, ...above];
  if (!makesHalf(right, middle)) return null;
  const edge = lengthOf(construction.comparesRises ? above.slice(0, 3) : above);
  const front: PieceName = m.choices.silhouette === 'cardigan' ? 'left-front' : 'front';
  return {
    outline: withoutRepeats([[0, 0], ...right, ...mirrored(above, middle)]),
    joins: [
      { edge: 'back armhole edge', with: 'back', length: edge },
      { edge: 'front armhole edge', with: front, length: edge },
      { edge: 'underarm', with: 'sleeve', length: lengthOf([corner, above[0]!]) },
    ],
  };
}
