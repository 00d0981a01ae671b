import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { closed, mirroredEdges, pathOf, type DrawnEdge, type Outline } from './drawn-edge.ts';
import { LEAST_LENGTH, makesHalf } from './half-shape.ts';
import { neckPath } from './neck-path.ts';
import { mirrored, type Path, type ValueOf } from '../model/path.ts';

/** Half widths of a body piece, from its middle line to its right. mm */
interface Half {
  readonly hem: number;
  readonly panel: number;
  readonly edge: number;
  readonly neck: number;
}

/** The right side of a body piece: its edges from the hem's corner to the neck, and the neck from there down to the middle. */
interface RightSide {
  readonly edges: readonly DrawnEdge[];
  readonly neck: Path;
}

interface NeckCut {
  readonly depth: number;
  readonly straight: boolean;
}

function rightSide(v: ValueOf, m: GarmentModel, middle: number, half: Half, neck: NeckCut): RightSide {
  const { shoulders, shoulderToHem, pieceLength } = m.body;
  const [underarm, ...armhole] = CONSTRUCTIONS[m.choices.construction].armholePath(v, m, {
    panel: middle + half.panel,
    edge: middle + half.edge,
    neck: middle + half.neck,
  });
  const top = v(shoulders ? shoulderToHem : pieceLength);
  const high = [middle + half.neck, top] as const;
  const ends = armhole[armhole.length - 1]!;
  // Without a shoulder the armhole ends at the neck, which may end there too.
  const cut: Path =
    shoulders || neck.depth > LEAST_LENGTH
      ? neckPath(middle, { half: half.neck, top, depth: neck.depth }, neck.straight)
      : [high, [middle, top]];
  return {
    edges: [
      { edge: 'right-side', path: [[middle + half.hem, 0], underarm!] },
      { edge: 'right-underarm', path: [underarm!, armhole[0]!] },
      { edge: shoulders ? 'right-armhole' : 'right-raglan', path: armhole },
      ...(shoulders ? [{ edge: 'right-shoulder', path: [ends, high] } as const] : []),
    ],
    neck: cut,
  };
}

/** A neck's edge: that of a round one is as long as its curve, which the outline draws in chords. */
const neckEdge = (path: Path, { depth, straight }: NeckCut, curve: number): DrawnEdge => ({
  edge: 'neck',
  path,
  ...(depth > LEAST_LENGTH && (straight ? { kind: 'slope' } : { kind: 'curve', length: curve })),
});

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
  const neck = { depth, straight: !back && choices.neckline === 'v' };
  const right = rightSide(v, m, middle, half, neck);
  if (!makesHalf([...pathOf(right.edges), ...right.neck], middle)) return null;
  const hem: DrawnEdge = {
    edge: 'hem',
    path: [
      [0, 0],
      [2 * middle, 0],
    ],
  };
  const wholeNeck = [...right.neck, ...mirrored(right.neck, middle)];
  const { backNeck, frontNeck } = body.neckEdges;
  return closed([
    hem,
    ...right.edges,
    neckEdge(wholeNeck, neck, v(back ? backNeck : frontNeck)),
    ...mirroredEdges(right.edges, middle),
  ]);
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
  if (!makesHalf([...pathOf(right.edges), ...right.neck], 0)) return null;
  const hem: DrawnEdge = {
    edge: 'hem',
    path: [
      [0, 0],
      [half.hem, 0],
    ],
  };
  const beside: readonly DrawnEdge[] = [
    ...right.edges,
    neckEdge(right.neck, neck, v(body.neckEdges.frontNeck)),
    { edge: 'front-edge', path: [right.neck[right.neck.length - 1]!, [0, 0]] },
  ];
  return closed([hem, ...(piece === 'left-front' ? beside : mirroredEdges(beside, half.hem / 2))]);
}
