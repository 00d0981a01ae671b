import type { Join, PieceName } from '../messages/advice.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { LEAST_LENGTH, makesHalf, type Outline } from './half-shape.ts';
import { neckPath } from './neck-path.ts';
import { lengthOf, mirrored, type Path, type ValueOf, withoutRepeats } from '../model/path.ts';

/** Half widths of a body piece, from its middle line to its right. mm */
interface Half {
  readonly hem: number;
  readonly panel: number;
  readonly edge: number;
  readonly neck: number;
}

/** The right side of a body piece from the hem's corner to the neck's middle, and the lengths of its edges. */
interface RightSide {
  readonly path: Path;
  readonly side: number;
  readonly armhole: number;
  /** 0 where there is no shoulder. */
  readonly shoulder: number;
}

function rightSide(
  v: ValueOf,
  m: GarmentModel,
  middle: number,
  half: Half,
  neck: { readonly depth: number; readonly straight: boolean },
): RightSide {
  const { shoulders, shoulderToHem, pieceLength } = m.body;
  const armhole = CONSTRUCTIONS[m.choices.construction].armholePath(v, m, {
    panel: middle + half.panel,
    edge: middle + half.edge,
    neck: middle + half.neck,
  });
  const corner = [middle + half.hem, 0] as const;
  const top = v(shoulders ? shoulderToHem : pieceLength);
  const high = [middle + half.neck, top] as const;
  // Without a shoulder the armhole ends at the neck, which may end there too.
  const cut: Path =
    shoulders || neck.depth > LEAST_LENGTH
      ? neckPath(middle, { half: half.neck, top, depth: neck.depth }, neck.straight)
      : [[middle, top]];
  return {
    path: [corner, ...armhole, ...(shoulders ? [high] : []), ...cut],
    side: lengthOf([corner, armhole[0]!]),
    armhole: lengthOf(armhole),
    shoulder: shoulders ? lengthOf([armhole[armhole.length - 1]!, high]) : 0,
  };
}

const EDGES = {
  left: { side: 'left side', shoulder: 'left shoulder', armhole: 'left armhole' },
  right: { side: 'right side', shoulder: 'right shoulder', armhole: 'right armhole' },
} as const;

function joins(right: RightSide, withs: Readonly<Record<string, PieceName>>, sleeved: boolean): Join[] {
  return (['left', 'right'] as const).flatMap((side) => {
    const other = withs[side];
    if (other === undefined) return [];
    return [
      { edge: EDGES[side].side, with: other, length: right.side },
      ...(right.shoulder > 0 ? [{ edge: EDGES[side].shoulder, with: other, length: right.shoulder }] : []),
      ...(sleeved ? [{ edge: EDGES[side].armhole, with: 'sleeve' as const, length: right.armhole }] : []),
    ];
  });
}

/** A back, or a front in one piece; null where it makes no shape. */
export function wholeBodyOutline(v: ValueOf, m: GarmentModel, piece: 'back' | 'front'): Outline | null {
  const { girths, armhole, body, choices } = m;
  const back = piece === 'back';
  const middle = v(back ? girths.backHem : girths.frontHem) / 2;
  const half = {
    hem: middle,
    panel: v(back ? girths.backPanel : girths.frontPanel) / 2,
    edge: body.shoulders ? v(back ? body.shoulders.backWidth : body.shoulders.frontWidth) / 2 : 0,
    neck: v(armhole.pieceNeck.width) / 2,
  };
  // The back of a garment without shoulders ends at its neck edge.
  const depth = back ? (body.shoulders ? v(armhole.pieceNeck.back) : 0) : v(armhole.pieceNeck.front);
  const right = rightSide(v, m, middle, half, { depth, straight: !back && choices.neckline === 'v' });
  if (!makesHalf(right.path, middle)) return null;
  const opens = choices.silhouette === 'cardigan';
  const withs: Readonly<Record<string, PieceName>> = !back
    ? { left: 'back', right: 'back' }
    : opens
      ? { left: 'left-front', right: 'right-front' }
      : { left: 'front', right: 'front' };
  return {
    outline: withoutRepeats([...right.path, ...mirrored(right.path, middle)]),
    joins: joins(right, withs, m.sleeve !== null),
  };
}

/** A left front lies with its front edge on the left, its side on the right; a right front is its mirror image. */
export function halfFrontOutline(v: ValueOf, m: GarmentModel, piece: 'left-front' | 'right-front'): Outline | null {
  const { girths, armhole, body, choices } = m;
  const front = body.half!;
  const toEdge = v(front.panel) - v(girths.frontPanel) / 2;
  const half = {
    hem: v(front.hem),
    panel: v(front.panel),
    edge: body.shoulders ? v(body.shoulders.frontWidth) / 2 + toEdge : 0,
    neck: v(front.neck),
  };
  const neck = { depth: v(armhole.pieceNeck.front), straight: choices.neckline === 'v' };
  const right = rightSide(v, m, 0, half, neck);
  if (!makesHalf(right.path, 0)) return null;
  const left = piece === 'left-front';
  const path = withoutRepeats([[0, 0], ...right.path]);
  return {
    outline: left ? path : withoutRepeats(mirrored(path, half.hem / 2)),
    joins: [
      ...joins(right, { [left ? 'left' : 'right']: 'back' }, m.sleeve !== null),
      { edge: 'front edge', with: 'front-band', length: v(front.edge) },
    ],
  };
}
